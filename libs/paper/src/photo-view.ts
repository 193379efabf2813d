/** A photo of a defect, worded; its picture is drawn where there is one. */
export interface PhotoView {
  /** Such as "photo 2 of defect D4". */
  readonly title: string;
  /** When it was taken and by whom. */
  readonly taken: string;
  /** SHA-256 of the original, 64 hexadecimal digits. */
  readonly sha256: string;
  /** Null when its file is missing or damaged: a framed notice says so. */
  readonly picture: PictureView | null;
}

/** An upright JPEG; width and height in px. */
export interface PictureView {
  readonly width: number;
  readonly height: number;
  /** Gives the bytes when it is drawn; undefined when they are no longer to be had. It may not throw. */
  readonly read: () => Uint8Array | undefined;
}
