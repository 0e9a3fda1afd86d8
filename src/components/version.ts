/** Version of the elements; a test holds it against the package's. */
export const VERSION = '0.1.0';
