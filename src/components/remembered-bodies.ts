/** Rendered bodies by collection and id. The app's bodies never change, and many pages show the same ones. */
export const rememberedBodies = new Map<string, string>();
