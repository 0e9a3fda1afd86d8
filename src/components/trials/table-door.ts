/* What reading and writing tables needs, loaded together with the first table. */
export { runsFromTable } from '../../core/files/runs-table.ts';
export { runsTable } from '../../core/files/runs-table-writer.ts';
export { tableColumns } from '../../core/files/table-columns.ts';
export { unitsFor } from '../../core/files/table-meanings.ts';
