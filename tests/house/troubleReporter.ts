/**
 * Writes down, by file, each test that failed and each error that no test caught, so that `npm test` can name them in its last lines and
 * run those files once more. The runner's own reports do not hold the second kind.
 */
import { writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import type { Reporter, TestModule } from 'vitest/node';

export interface Trouble {
  /** null: the runner does not know where it came from */
  readonly file: string | null;
  readonly text: string;
}

const firstLine = (text = ''): string => text.split('\n')[0]?.slice(0, 300) ?? '';

function inModule(module: TestModule): readonly Trouble[] {
  const file = relative(process.cwd(), module.moduleId);
  const tests = [...module.children.allTests('failed')].map((test) => {
    const [error] = test.result().errors ?? [];
    return { file, text: `${test.fullName}: ${firstLine(error?.message)}` };
  });
  const besides = module.errors().map((error) => ({ file, text: firstLine(error.message) }));
  return [...tests, ...besides];
}

interface Uncaught {
  readonly message: string;
  readonly stack?: string;
  readonly VITEST_TEST_PATH?: string;
  readonly VITEST_TEST_NAME?: string;
}

function uncaught(error: Uncaught): Trouble {
  const at = firstLine(error.stack?.split('\n').find((line) => line.includes('/src/') || line.includes('/tests/')));
  const file = error.VITEST_TEST_PATH ? relative(process.cwd(), error.VITEST_TEST_PATH) : null;
  return { file, text: `not caught, ${error.VITEST_TEST_NAME ?? 'between tests'}: ${firstLine(error.message)} ${at}` };
}

export default class TroubleReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const file = process.env.TROUBLE_FILE;
    if (file === undefined) return;
    const troubles = [...modules.flatMap(inModule), ...errors.map((error) => uncaught(error as Uncaught))];
    writeFileSync(file, JSON.stringify(troubles));
  }
}
