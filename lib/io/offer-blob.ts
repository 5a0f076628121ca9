/** Hands the user a file to save. */
export function offerBlob(name: string, content: Blob): void {
  const url = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has begun once the click is handled; the address may go at the end of the turn.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
