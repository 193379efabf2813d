import { useEffect, useState } from 'react';

/** Longest side of a thumbnail, px. */
const SIDE_PX = 160;

/**
 * A small copy of a photo as a data: address, which the security policy allows where it forbids blob: ones; undefined
 * until it is drawn, and for a file that this browser cannot read.
 */
export const useThumbnail = (photo: File): string | undefined => {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    let gone = false;
    thumbnailOf(photo).then(
      (drawn) => {
        if (!gone) setAddress(drawn);
      },
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [photo]);
  return address;
};

const thumbnailOf = async (photo: File): Promise<string> => {
  const picture = await createImageBitmap(photo);
  const scale = Math.min(1, SIDE_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return canvas.toDataURL('image/jpeg', 0.7);
};
