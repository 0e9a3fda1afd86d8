// Leaflet's own source modules, typed by the classes that its type package describes.
declare module 'leaflet/src/map/Map.js' {
  export { Map } from 'leaflet';
}
declare module 'leaflet/src/map/handler/Map.ScrollWheelZoom.js';
declare module 'leaflet/src/map/handler/Map.TouchZoom.js';
declare module 'leaflet/src/layer/LayerGroup.js' {
  export { LayerGroup } from 'leaflet';
}
declare module 'leaflet/src/layer/marker/DivIcon.js' {
  export { DivIcon } from 'leaflet';
}
declare module 'leaflet/src/layer/marker/Marker.js' {
  export { Marker } from 'leaflet';
}
declare module 'leaflet/src/layer/tile/TileLayer.js' {
  export { TileLayer } from 'leaflet';
}
declare module 'leaflet/src/layer/vector/Polygon.js' {
  export { Polygon } from 'leaflet';
}
declare module 'leaflet/src/layer/vector/Polyline.js' {
  export { Polyline } from 'leaflet';
}
declare module 'leaflet/src/layer/vector/SVG.js' {
  export { SVG } from 'leaflet';
}
