/* What the door tells of devices: typed only, since we write both ends. */

/** With what a person takes their place on another device, until when (ms since the epoch), and who they are. */
export interface ReturnCode {
  /** `K3M-T7P`. */
  readonly code: string;
  readonly until: number;
  readonly name: string;
  /** A square picture that opens the door with the code: its rows one after the other, `1` is dark. */
  readonly picture: { readonly size: number; readonly bits: string };
}

/** What a device at a sink shows of its class: who works at it, and who may be chosen. */
export interface SinkSheet {
  readonly className: string;
  readonly isLocked: boolean;
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly names: readonly { readonly id: string; readonly name: string }[];
}

/** Whether this device may be, and is, called while its page is closed; and by which key its push service knows us. */
export interface PushState {
  readonly isAllowed: boolean;
  readonly isOn: boolean;
  readonly publicKey: string;
}
