export interface HeldCounts {
  readonly name: string;
  readonly joinedAt: number;
  readonly plans: number;
  readonly runs: number;
  readonly rolls: number;
  readonly photos: number;
  readonly prints: number;
  readonly messages: number;
  readonly ledgerLines: number;
  readonly devices: number;
}
