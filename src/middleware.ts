import { defineMiddleware } from 'astro:middleware';
import { mediaType } from './files/media-type.ts';

/**
 * While developing, gives each page its view as the build does. In the build, answers a page that fails with its
 * reason, so that the build can say it; Astro would answer with nothing.
 */
export const onRequest = defineMiddleware(async (context, next) => {
  if (import.meta.env.DEV) {
    // Photos are made by Astro's own endpoint.
    if (context.url.pathname === '/_image/' || context.url.pathname === '/_image') return next();
    const { devAnswer } = await import('./build/dev-site.ts');
    const answer = await devAnswer(context.url.pathname);
    if (!answer) return new Response('Nothing is here.', { status: 404 });
    if ('file' in answer) {
      const headers = { 'content-type': mediaType(answer.file.file) };
      return new Response(answer.file.content as BodyInit, { headers });
    }
    context.locals.view = answer.view;
    return next();
  }
  try {
    return await next();
  } catch (error) {
    return new Response(error instanceof Error ? error.message : String(error), { status: 500 });
  }
});
