import { afterEach, describe, expect, it } from '@jest/globals';
import { openFakeCamera, type FakeCamera } from '../../support/web/fake-camera.js';
import { rasterize } from '../../support/read-labels.js';
import { page, service, watched } from '../stage.js';
import { openTablet, readyForNoNetwork } from '../tablets.js';

/** What the browser of these cases sees when a page opens its camera. */
export let camera: FakeCamera;

export const openCamera = async (): Promise<FakeCamera> => {
  camera = await openFakeCamera();
  return camera;
};

/** Holds the label of a thing before the camera, as the service prints it. */
const holdLabelOf = async (of: string, code: string): Promise<void> => {
  const printed = await fetch(`${service.url}/api/labels.pdf`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...(await service.signedIn()) },
    body: JSON.stringify({ stock: 'roll-62x29', labels: [{ of, code }] }),
  });
  expect(printed.status).toBe(200);
  const [label] = await rasterize(Buffer.from(await printed.arrayBuffer()));
  await camera.show(label ?? new Uint8Array());
};

const openCameraOfPage = (): Promise<void> => page.getByRole('button', { name: 'Camera' }).tap();

/** Which of the files that only the camera needs were asked for. */
const filesOfCamera = (asked: readonly string[]): readonly string[] =>
  asked.map((url) => new URL(url).pathname).filter((path) => /camera|code-library|code-worker|\.wasm$/.test(path));

describe('the camera of a tablet whose browser reads no codes', () => {
  afterEach(() => watched.close());

  it('reads the labels of a hull and of a lot by a library, fetched when it is opened, and with no network too', async () => {
    await openTablet('/station/layer', 'TAB-K', 'LAM-1');
    await page.context().addInitScript('delete globalThis.BarcodeDetector');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.reload();
    await page.getByLabel('Scan or type a part or hull').waitFor();
    expect(await page.evaluate("'BarcodeDetector' in globalThis")).toBe(false);
    expect(filesOfCamera(asked)).toEqual([]);

    await holdLabelOf('hull', '86-6');
    await openCameraOfPage();
    await page.getByRole('heading', { name: /86-6/ }).waitFor();
    expect(filesOfCamera(asked)).not.toEqual([]);
    expect(asked.filter((url) => !url.startsWith(service.url))).toEqual([]);
    expect(watched.complaints).toEqual([]);

    await readyForNoNetwork(page);
    await page.context().setOffline(true);
    await page.reload();
    await holdLabelOf('lot', 'G-2');
    await openCameraOfPage();
    await page.getByRole('button', { name: /G-2/ }).waitFor();
    // Once read, the camera is closed.
    expect(await page.locator('video').count()).toBe(0);
  });

  it('says so where codes cannot be read either, and where there is no camera', async () => {
    await openTablet('/station/layer', 'TAB-K', 'LAM-1');
    await page.context().addInitScript('delete globalThis.BarcodeDetector; delete globalThis.Worker');
    await page.reload();
    await openCameraOfPage();
    await page.getByText('This device does not read codes from its camera. Type the code.').waitFor();
    await page.evaluate(
      "navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError'))",
    );
    await page.getByRole('button', { name: 'Close the camera' }).tap();
    await openCameraOfPage();
    await page.getByText('The camera does not open. Type the code.').waitFor();
  });
});

describe('the camera of a tablet whose browser reads codes', () => {
  afterEach(() => watched.close());

  it('leaves it to the browser, unless that does not know the codes of our labels', async () => {
    await holdLabelOf('hull', '86-6');
    await openTablet('/station/layer', 'TAB-K', 'LAM-1');
    await page.context().addInitScript(`
      globalThis.BarcodeDetector = class {
        static getSupportedFormats = async () => JSON.parse(sessionStorage.getItem('formats'));
        detect = async () => [{ rawValue: '/l/hull/NO-SUCH' }];
      };`);
    const opensWith = async (formats: readonly string[]): Promise<void> => {
      await page.evaluate(`sessionStorage.setItem('formats', '${JSON.stringify(formats)}')`);
      await page.goto(`${service.url}/station/layer`);
      await openCameraOfPage();
    };
    await opensWith(['code_128', 'data_matrix', 'qr_code']);
    await page.getByText('NO-SUCH is not on the day sheet of this tablet.').waitFor();
    await opensWith(['qr_code']);
    await page.getByRole('heading', { name: /86-6/ }).waitFor();
  });
});
