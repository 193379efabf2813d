import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { useWords } from '../words/use-words.js';
import type { CodeReader } from './code-library.js';
import { openCodeReader } from './code-reader.js';

/** So long a picture is left alone after one was looked at, ms. */
const REST_MS = 250;
/** Small codes need more than the few pixels that browsers take by themselves. */
const WANTED = { video: { facingMode: 'environment', width: { ideal: 1280 } } } as const;

/** The camera of the tablet, until it has read a code. */
export const Camera = ({ onCode }: { readonly onCode: (code: string) => void }) => {
  const { t } = useWords();
  const video = useRef<HTMLVideoElement>(null);
  const [failed, setFailed] = useState<'scan.noCamera' | 'scan.noReader'>();
  // Begun once: another function to call does not begin it anew.
  const read = useEffectEvent(onCode);
  useEffect(() => {
    let open = true;
    let stream: MediaStream | undefined;
    let reader: CodeReader | undefined;
    const show = async (): Promise<HTMLVideoElement | undefined> => {
      stream = await navigator.mediaDevices.getUserMedia(WANTED);
      if (!open || video.current === null) return undefined;
      video.current.srcObject = stream;
      await video.current.play();
      return video.current;
    };
    const look = async (shown: HTMLVideoElement): Promise<void> => {
      reader = await openCodeReader();
      while (open) {
        const code = await reader.read(shown);
        if (code !== undefined && open) return read(code);
        await new Promise((again) => setTimeout(again, REST_MS));
      }
    };
    const end = (): void => {
      stream?.getTracks().forEach((track) => track.stop());
      reader?.close();
    };
    void show()
      .catch(() => void (open && setFailed('scan.noCamera')))
      .then((shown) => shown && look(shown))
      .catch(() => open && setFailed('scan.noReader'))
      // What was opened after the page was left ends here too.
      .finally(end);
    return () => {
      open = false;
      end();
    };
  }, []);
  if (failed !== undefined) return <p className="wrong">{t(failed)}</p>;
  return <video ref={video} muted playsInline className="st-camera" aria-label={t('scan.camera')} />;
};
