/** What custom-elements.json of the package holds, put in by the build (astro.config.mjs). */
declare const ELEMENTS: import('custom-elements-manifest/schema').Package;
