/** Hands files to the person; nothing is sent anywhere. Apart from what paints them, so that the first page stays small. */

/** Offers a file to be kept, under a name. */
export function offerFile(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the file after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
