// @vitest-environment happy-dom
/** Reading codes with a made-up detector and camera: what the browser would answer is said by the test. */
import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { type CheckedCode, ReadCode } from '#parts/ReadCode.tsx';
import { checkSampleNumber, sampleNumberOf } from '#records/sampleNumber.ts';

const right = sampleNumberOf('41', 7);
const other = sampleNumberOf('41', 8);
const wrongDigit = `${right.slice(0, -1)}${(Number(right.at(-1)) + 1) % 10}`;

const check = (text: string): CheckedCode => {
  const checked = checkSampleNumber(text);
  return checked.kind === 'right'
    ? { kind: 'right', number: checked.sampleNumber }
    : { kind: 'wrong', why: `Mistake: ${checked.mistake}` };
};

/** What the camera shows at the moment. */
let seen: readonly string[] = [];
const stop = vi.fn();
const listeners: (() => void)[] = [];
const track = { stop, addEventListener: (_: string, listener: () => void) => void listeners.push(listener) };
const getUserMedia = vi.fn(
  async (_: MediaStreamConstraints) => ({ getTracks: () => [track] }) as unknown as MediaStream,
);

class FakeDetector {
  static formats: string[] = ['qr_code', 'ean_13'];
  static async getSupportedFormats() {
    return FakeDetector.formats;
  }
  async detect() {
    return seen.map((rawValue) => ({ rawValue }));
  }
}

beforeEach(() => {
  seen = [];
  listeners.length = 0;
  stop.mockClear();
  getUserMedia.mockClear();
  FakeDetector.formats = ['qr_code', 'ean_13'];
  vi.stubGlobal('BarcodeDetector', FakeDetector);
  Object.defineProperty(navigator, 'mediaDevices', { value: { getUserMedia }, configurable: true });
  Object.defineProperty(HTMLMediaElement.prototype, 'srcObject', { value: null, writable: true, configurable: true });
  HTMLMediaElement.prototype.play = async () => undefined;
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const openButton = () => screen.findByRole('button', { name: 'Read the code with the camera' });
async function opened(goesOn = false) {
  const onRead = vi.fn();
  const view = render(<ReadCode check={check} onRead={onRead} goesOn={goesOn} />);
  await userEvent.click(await openButton());
  await screen.findByText('Hold the code of one label in the picture.');
  return { onRead, view };
}
const settled = () => act(async () => void (await new Promise((done) => setTimeout(done, 20))));

describe('where the device cannot read codes', () => {
  test.each([
    ['no detector', () => vi.stubGlobal('BarcodeDetector', undefined)],
    ['a detector without this format', () => void FakeDetector.formats.splice(0, 1)],
    ['no camera interface', () => void Object.defineProperty(navigator, 'mediaDevices', { value: undefined })],
  ])('%s: nothing is shown', async (_, prepare) => {
    prepare();
    const { container } = render(<ReadCode check={check} onRead={() => undefined} />);
    await settled();
    expect(container).toBeEmptyDOMElement();
  });
});

describe('reading a label', () => {
  test('the camera at the back opens on the tap, not before; a right number is handed over and the camera is off', async () => {
    render(<ReadCode check={check} onRead={() => undefined} />);
    await openButton();
    expect(getUserMedia).not.toHaveBeenCalled();
    cleanup();
    const { onRead } = await opened();
    expect(getUserMedia).toHaveBeenCalledWith({ video: { facingMode: 'environment' }, audio: false });
    seen = [right];
    await waitFor(() => expect(onRead).toHaveBeenCalledExactlyOnceWith(right));
    expect(screen.getByRole('status')).toHaveTextContent(`Read: ${right.split('').join(' ')}`);
    await waitFor(() => expect(stop).toHaveBeenCalledOnce());
    expect(await openButton()).toBeVisible();
  });

  test('a wrong check digit is told in words, nothing is handed over, and the next label is read', async () => {
    const { onRead } = await opened();
    seen = [wrongDigit];
    expect(await screen.findByText('A code was read, but not taken. Mistake: checkDigit.')).toBeVisible();
    seen = ['https://sash.example/'];
    expect(await screen.findByText('A code was read, but not taken. Mistake: notDigits.')).toBeVisible();
    expect(onRead).not.toHaveBeenCalled();
    expect(stop).not.toHaveBeenCalled();
    seen = [right];
    await waitFor(() => expect(onRead).toHaveBeenCalledWith(right));
  });

  test('two labels in the picture: neither is taken', async () => {
    const { onRead } = await opened();
    seen = [right, other];
    expect(await screen.findByText(/More than one code is in the picture/)).toBeVisible();
    expect(onRead).not.toHaveBeenCalled();
  });

  test('label after label: each once, until the camera is closed', async () => {
    const { onRead } = await opened(true);
    seen = [right];
    await waitFor(() => expect(onRead).toHaveBeenCalledTimes(1));
    seen = [other];
    await waitFor(() => expect(onRead).toHaveBeenCalledTimes(2));
    expect(stop).not.toHaveBeenCalled();
    await userEvent.click(screen.getByRole('button', { name: 'Close the camera' }));
    expect(stop).toHaveBeenCalledOnce();
    expect(onRead.mock.calls.flat()).toEqual([right, other]);
  });
});

describe('the camera is off', () => {
  test('when the page is left', async () => {
    const { view } = await opened();
    view.unmount();
    expect(stop).toHaveBeenCalledOnce();
  });

  test('when it opens only after the page was left', async () => {
    let give: (stream: MediaStream) => void = () => undefined;
    getUserMedia.mockImplementationOnce(() => new Promise<MediaStream>((done) => (give = done)));
    const { unmount } = render(<ReadCode check={check} onRead={() => undefined} />);
    await userEvent.click(await openButton());
    unmount();
    give({ getTracks: () => [track] } as unknown as MediaStream);
    await settled();
    expect(stop).toHaveBeenCalledOnce();
  });

  test('when the page is hidden, or the device takes it away', async () => {
    await opened();
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValueOnce('hidden');
    act(() => void document.dispatchEvent(new Event('visibilitychange')));
    expect(screen.getByRole('status')).toHaveTextContent('The camera was switched off.');
    expect(stop).toHaveBeenCalledOnce();
    await userEvent.click(await openButton());
    await screen.findByText('Hold the code of one label in the picture.');
    act(() => listeners.at(-1)?.());
    expect(screen.getByRole('status')).toHaveTextContent('The camera was switched off.');
    expect(stop).toHaveBeenCalledTimes(2);
  });

  test.each([
    ['NotAllowedError', /it was refused on this device/],
    ['NotFoundError', /No camera was found\. Type the number\./],
    ['NotReadableError', /another program may be using it/],
  ])('%s is told in words', async (name, told) => {
    getUserMedia.mockRejectedValueOnce(new DOMException('x', name));
    render(<ReadCode check={check} onRead={() => undefined} />);
    await userEvent.click(await openButton());
    expect(await screen.findByText(told)).toBeVisible();
    expect(await openButton()).toBeVisible();
  });
});
