/** Names of files that are saved. */

/** A title as a file name: letters and digits of any script, dashes between; `otherwise` where none are left. */
export function fileNameOf(title: string, otherwise: string): string {
  const plain = title
    .toLocaleLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? otherwise : plain;
}
