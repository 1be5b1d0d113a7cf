/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** What the page shows. Given by the build; while developing, by the middleware. */
    view?: import('./build/site.ts').PageView;
  }
}
