/** The one address of the app on the maker's own machine. A browser keeps the book by address, so this never changes. */
export const host = 'localhost';
export const port = 4517;
export const address = `http://${host}:${port}/`;
