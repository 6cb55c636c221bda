/** Time that this process spent computing. A busy machine is no defect, a long way to an answer is: limits in tests are held to this. */
export function processorMs(): () => number {
  const from = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1000;
  };
}
