import { createApp } from 'astro/app/entrypoint';

const app = createApp({ streaming: false });

/** One page of the compiled site; what it shows comes in `locals`. */
export function render(request: Request, locals: object): Promise<Response> {
  return app.render(request, { locals });
}
