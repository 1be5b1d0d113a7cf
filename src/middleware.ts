import { defineMiddleware } from 'astro:middleware';

/** Answers a page that fails with its reason, so that the build can say it; Astro would answer with nothing. */
export const onRequest = defineMiddleware(async (_context, next) => {
  try {
    return await next();
  } catch (error) {
    if (import.meta.env.DEV) throw error;
    return new Response(error instanceof Error ? error.message : String(error), { status: 500 });
  }
});
