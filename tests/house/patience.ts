/** On a busy machine a page takes its time, and that is no defect: what is waited for may take ten seconds. */
if (typeof document !== 'undefined') {
  const { configure } = await import('@testing-library/react');
  configure({ asyncUtilTimeout: 10_000 });
}

export {};
