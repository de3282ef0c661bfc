export const PHOTO_TYPES = ["image/jpeg", "image/png"] as const;

export type PhotoType = (typeof PHOTO_TYPES)[number];

/** What a photo is of: a roll has one of its contact sheet, a print one of itself. */
export const PHOTO_KINDS = ["roll", "print"] as const;
export interface PhotoOf {
  readonly kind: (typeof PHOTO_KINDS)[number];
  /** The roll's or the print's number in the log. */
  readonly number: number;
}

export interface Photo {
  readonly mediaType: PhotoType;
  readonly bytes: Uint8Array;
}

/** What a format's own reader gives: the cleaned bytes and the size of the picture; undefined: not whole. */
export interface Cleaned {
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
}
