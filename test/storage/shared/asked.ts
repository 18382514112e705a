/**
 * Every kind of request our code makes to a store, and every way one of them is refused, in an order in which later
 * ones see what earlier ones did. Asked once of a real server, whose answers are kept in `realAnswers.json`.
 */
/** A request; without a name and password where `open` is true. */
export interface Asked {
  readonly method: 'GET' | 'POST' | 'PUT';
  readonly path: string;
  readonly body?: string;
  readonly open?: boolean;
}

const get = (path: string): Asked => ({ method: 'GET', path });
const put = (path: string, body: string): Asked => ({ method: 'PUT', path, body });
const bulk = (...docs: unknown[]): Asked => ({
  method: 'POST',
  path: '/rides/_bulk_docs',
  body: JSON.stringify({ docs }),
});
const range = (first: string, last: string, limit: number): Asked =>
  get(
    `/rides/_all_docs?startkey=${encodeURIComponent(JSON.stringify(first))}&endkey=${encodeURIComponent(JSON.stringify(last))}&include_docs=true&limit=${limit}`,
  );
const since = (from: string, limit: number): Asked =>
  get(`/rides/_changes?since=${from}&include_docs=true&limit=${limit}`);

/** Documents like ours: some rides and a head, whose ids sort otherwise than they were written. */
const rides = [5, 1, 4, 2, 3, 9, 8, 7, 6].map((seq) => ({
  _id: `ride:tuesday:t1.${seq}:0${seq}af:marks`,
  record: { seq, nickname: 'red-fox', total: 70 + seq, marks: [0.5, null, true, 'late'] },
}));
const head = { _id: 'head:tuesday:t1:9:77af', head: '{"kind":"clinic-rides","planId":"tuesday"}' };
const one = `/rides/${encodeURIComponent('head:tuesday:t2:1:00ff')}`;
const long = 'x'.repeat(1_500_000);

/** All of them, in order. The database `rides` is there and empty, `other` is not. */
export const everythingAsked: readonly Asked[] = [
  // An empty database, and none.
  get('/rides/_all_docs?limit=0'),
  get('/rides/_changes?limit=0&since=now'),
  since('0', 200),
  get('/other/_all_docs?limit=0'),
  get('/other/_changes?limit=0&since=now'),
  put('/other/x', '{}'),
  { method: 'POST', path: '/other/_bulk_docs', body: '{"docs":[{"_id":"a"}]}' },
  // Nobody in particular.
  { ...get('/rides/_all_docs?limit=0'), open: true },
  { ...put('/rides/a', '{}'), open: true },
  // The database itself, which is there already.
  { method: 'PUT', path: '/rides' },
  // One piece: written, there already, there with something else.
  put(one, '{"head":"one"}'),
  put(one, '{"head":"one"}'),
  put(one, '{"head":"two"}'),
  // Pieces that are none.
  put('/rides/bad', '{"record":'),
  put('/rides/bad', '"text"'),
  put('/rides/bad', '[1]'),
  put('/rides/_under', '{"record":1}'),
  put('/rides/bad', '{"_member":1}'),
  // A handful: written, half there already, the same twice, empty, none.
  bulk(...rides, head),
  bulk({ _id: 'new:1', record: 1 }, rides[0], { _id: 'new:2', record: 'ü☃𝄞' }, { _id: 'new:1', record: 2 }),
  bulk(),
  bulk({ _id: 'new:3' }, { _id: '_under' }),
  bulk({ _id: 5 }),
  bulk({ _id: 'new:3' }, { _id: 'new:4', _member: 1 }),
  { method: 'POST', path: '/rides/_bulk_docs', body: '{"docs":' },
  { method: 'POST', path: '/rides/_bulk_docs', body: '{"docs":1}' },
  { method: 'POST', path: '/rides/_bulk_docs', body: '{}' },
  // Everything, in ranges and page by page, also behind the last and from the wrong end.
  get('/rides/_all_docs'),
  get('/rides/_all_docs?limit=0'),
  range('head:tuesday:', 'head:tuesday:\ufff0', 200),
  range('ride:tuesday:', 'ride:tuesday:\ufff0', 4),
  range('ride:tuesday:t1.4:04af:marks\u0000', 'ride:tuesday:\ufff0', 4),
  range('ride:wednesday:', 'ride:wednesday:\ufff0', 200),
  range('z', 'a', 200),
  // What is new: page by page, at the end, behind the end, from now on, and without a limit.
  since('0', 4),
  since('4', 4),
  since('8', 200),
  since('13', 200),
  since('99', 200),
  get('/rides/_changes?since=0'),
  get('/rides/_changes?limit=0&since=now'),
  // Long ones are taken: it has no limit of its own.
  put('/rides/long:1', JSON.stringify({ record: long })),
  bulk({ _id: 'long:2', record: long }),
  get('/rides/_all_docs?limit=0'),
];
