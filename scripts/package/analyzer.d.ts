import type { Package } from 'custom-elements-manifest/schema';
import type { SourceFile } from 'typescript';

// What the analyser offers and its own types leave out.
declare module '@custom-elements-manifest/analyzer' {
  interface AnalyzerPlugin {
    readonly name: string;
  }
  export function create(asked: {
    modules: readonly SourceFile[];
    plugins?: readonly AnalyzerPlugin[];
    context?: { dev: boolean };
  }): Package;
  export const ts: typeof import('typescript');
}
