export const PHOTO_TYPES = ["image/jpeg", "image/png"] as const;

export type PhotoType = (typeof PHOTO_TYPES)[number];

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
