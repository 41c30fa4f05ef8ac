/** The first few of many messages in one line, and how many more there are. */
export function firstFew(messages: readonly string[], most = 5): string {
  const more = messages.length - most;
  return [
    ...messages.slice(0, most),
    ...(more > 0 ? [`And ${more} ${more === 1 ? 'line' : 'lines'} more.`] : []),
  ].join(' ');
}
