import { define } from '../define.ts';
import { FleetEditor } from './fleet-editor.ts';
import { WatersEditor } from './waters-editor.ts';

define('homeleg-waters-editor', WatersEditor);
define('homeleg-fleet-editor', FleetEditor);
