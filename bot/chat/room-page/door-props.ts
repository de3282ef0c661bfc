import type { Answer } from "./api.ts";

export interface DoorProps {
  readonly isBusy: boolean;
  enter(name: string, asking: Promise<Answer<unknown>>): Promise<void>;
}
