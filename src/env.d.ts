/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** What the page shows. Given by the build; while developing, by the middleware. */
    view?: import('./views/page-view.ts').PageView;
    /** Whether documents are printed too, so that pages may lead to them. */
    pdfs?: boolean;
  }
}

declare module '@messageformat/core/compile-module.js' {
  export { default } from '@messageformat/core/lib/compile-module.js';
}
