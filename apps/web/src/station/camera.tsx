import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { useWords } from '../words/use-words.js';

interface Detector {
  readonly detect: (of: HTMLVideoElement) => Promise<readonly { readonly rawValue: string }[]>;
}
type MakeDetector = new (options: { readonly formats: readonly string[] }) => Detector;

/** So often a picture is looked at, ms. */
const LOOK_MS = 250;

/** The camera of the tablet, until it has read a code. The browser itself reads it (Barcode Detection API). */
export const Camera = ({ onCode }: { readonly onCode: (code: string) => void }) => {
  const { t } = useWords();
  const video = useRef<HTMLVideoElement>(null);
  const [failed, setFailed] = useState(false);
  // Begun once: another function to call does not begin it anew.
  const read = useEffectEvent(onCode);
  useEffect(() => {
    let open = true;
    let stream: MediaStream | undefined;
    const look = async (): Promise<void> => {
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
      const shown = video.current;
      if (!open || shown === null) return stop(stream);
      shown.srcObject = stream;
      await shown.play();
      const Make = (globalThis as unknown as { readonly BarcodeDetector: MakeDetector }).BarcodeDetector;
      const detector = new Make({ formats: ['qr_code', 'data_matrix', 'code_128'] });
      while (open) {
        const [found] = await detector.detect(shown);
        if (found && open) return read(found.rawValue);
        await new Promise((again) => setTimeout(again, LOOK_MS));
      }
    };
    look().catch(() => open && setFailed(true));
    return () => {
      open = false;
      if (stream) stop(stream);
    };
  }, []);
  if (failed) return <p className="wrong">{t('scan.noCamera')}</p>;
  return <video ref={video} muted playsInline className="st-camera" aria-label={t('scan.camera')} />;
};

const stop = (stream: MediaStream): void => stream.getTracks().forEach((track) => track.stop());
