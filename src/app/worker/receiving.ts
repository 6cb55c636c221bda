/**
 * What another app shares comes as a form to an address that no server knows (manifest.ts names it). The files are put by, and the
 * answer sends the page to where they are shown. Nothing of them is looked into here.
 */
import { park } from '#store/received.ts';
import { receivePath, shareField } from '../receivePath.ts';

export const isShare = (url: URL, scope: string): boolean => url.href === new URL(receivePath, scope).href;

/** The files of a form; an empty field is no file. Never throws: what is no form holds none. */
async function filesIn(request: Request): Promise<readonly File[]> {
  try {
    const form = await request.formData();
    return form.getAll(shareField).filter((entry): entry is File => entry instanceof File && entry.size > 0);
  } catch {
    return [];
  }
}

/** 303: the page is asked for anew by its plain address, so that loading it again sends nothing twice. */
export async function receive(request: Request, scope: string): Promise<Response> {
  const { not } = await park(await filesIn(request));
  const question = not === null ? '' : `?not=${not}`;
  return Response.redirect(new URL(`./#/received${question}`, scope).href, 303);
}
