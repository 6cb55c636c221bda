/** Where a shared file is sent, below the address of the app, and the name of its field. Nothing stands there on a server. */
export const receivePath = './receive';
export const shareField = 'file';
