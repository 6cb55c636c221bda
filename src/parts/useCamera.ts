/** A camera that is on while `open`, looking for codes a few times a second; off again when it closes, the page is left or hidden. */
import { type RefObject, useEffect, useRef } from 'react';
import { type CameraTrouble, codeDetector, openCamera, troubleOf } from './codeReader.ts';

export interface CameraUse {
  readonly open: boolean;
  /** The camera shows a picture. */
  readonly onStarted: () => void;
  /** Texts of all codes in one picture, each once; never none. */
  readonly onCodes: (texts: readonly string[]) => void;
  readonly onTrouble: (trouble: CameraTrouble) => void;
}

const lookEveryMs = 200;

interface Looking {
  readonly video: HTMLVideoElement;
  readonly use: RefObject<CameraUse>;
}

/** Opens the camera and looks; the answer ends it, whatever state it is in. */
function startLooking({ video, use }: Looking): () => void {
  let over = false;
  let stream: MediaStream | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const end = () => {
    over = true;
    clearTimeout(timer);
    for (const track of stream?.getTracks() ?? []) track.stop();
    stream = null;
    video.srcObject = null;
  };
  const fail = (trouble: CameraTrouble) => {
    if (over) return;
    end();
    use.current.onTrouble(trouble);
  };
  const hidden = () => {
    if (document.visibilityState === 'hidden') fail('stopped');
  };
  const detector = codeDetector();
  const look = async () => {
    try {
      const texts = [...new Set((await detector?.detect(video))?.map(({ rawValue }) => rawValue))];
      if (!over && texts.length > 0) use.current.onCodes(texts);
    } catch {
      // a picture that is not there yet; the next one may be
    }
    if (!over) timer = setTimeout(() => void look(), lookEveryMs);
  };
  const start = async () => {
    try {
      const opened = await openCamera();
      stream = opened;
      // closed while the browser was still asking
      if (over) return end();
      for (const track of opened.getTracks()) track.addEventListener('ended', () => fail('stopped'));
      video.srcObject = opened;
      await video.play();
    } catch (error) {
      return fail(troubleOf(error));
    }
    if (over) return;
    use.current.onStarted();
    await look();
  };
  document.addEventListener('visibilitychange', hidden);
  void start();
  return () => {
    document.removeEventListener('visibilitychange', hidden);
    end();
  };
}

/** Give the ref to a video element that stands on the page while `open`. */
export function useCamera(use: CameraUse): RefObject<HTMLVideoElement | null> {
  const video = useRef<HTMLVideoElement>(null);
  const latest = useRef(use);
  latest.current = use;
  const { open } = use;
  useEffect(() => {
    if (!open || video.current === null) return;
    return startLooking({ video: video.current, use: latest });
  }, [open]);
  return video;
}
