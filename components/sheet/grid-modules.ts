import {
  CellStyleModule,
  ClientSideRowModelModule,
  ColumnApiModule,
  CustomEditorModule,
  enableDevValidations,
  ModuleRegistry,
  RenderApiModule,
  RowApiModule,
  RowDragModule,
  RowStyleModule,
  ScrollApiModule,
} from 'ag-grid-community';

/** Registers what the sheet uses of the grid, and no more. In development the grid then also checks its options. */
export function registerGrid(): void {
  ModuleRegistry.registerModules([
    CellStyleModule,
    ClientSideRowModelModule,
    ColumnApiModule,
    CustomEditorModule,
    RenderApiModule,
    RowApiModule,
    RowDragModule,
    RowStyleModule,
    ScrollApiModule,
  ]);
  if (process.env.NODE_ENV !== 'production') enableDevValidations();
}
