/** Puts the headers of responseHeaders.ts on the preview server, and the policy into the built page as a second line of defence. */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Plugin } from 'vite';
import { headersFor, policyInPage } from './responseHeaders.ts';

/** The headers are set again when the answer starts, so that no default of the server underneath is left over. */
function send(request: IncomingMessage, response: ServerResponse): void {
  const path = new URL(request.url ?? '/', 'http://localhost').pathname;
  const headers = Object.entries(headersFor(path));
  for (const [name, value] of headers) response.setHeader(name, value);
  const writeHead = response.writeHead.bind(response) as (...args: unknown[]) => ServerResponse;
  response.writeHead = ((status: number, ...rest: unknown[]) => {
    const given = rest.find((each) => typeof each === 'object' && each !== null) as Record<string, unknown> | undefined;
    for (const [name, value] of headers) {
      if (given) for (const key of Object.keys(given)) if (key.toLowerCase() === name.toLowerCase()) delete given[key];
      response.setHeader(name, value);
    }
    return writeHead(status, ...rest);
  }) as ServerResponse['writeHead'];
}

export function responseHeadersPlugin(): Plugin {
  return {
    name: 'response-headers',
    configurePreviewServer(server) {
      server.middlewares.use((request, response, next) => {
        send(request, response);
        next();
      });
    },
    transformIndexHtml: {
      order: 'pre',
      handler: (html, { server }) =>
        server
          ? html
          : {
              html,
              tags: [
                {
                  tag: 'meta',
                  attrs: { 'http-equiv': 'Content-Security-Policy', content: policyInPage },
                  injectTo: 'head-prepend',
                },
              ],
            },
    },
  };
}
