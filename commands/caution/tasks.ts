export const TASKS = ["mixing", "developing", "fixing", "waste", "spill"] as const;
export type Task = (typeof TASKS)[number];
