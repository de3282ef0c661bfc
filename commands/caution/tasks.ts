export const TASKS = ["mixing", "developing", "fixing", "printing", "waste", "spill"] as const;
export type Task = (typeof TASKS)[number];
