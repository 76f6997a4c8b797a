// Package connector sets connectors on paper: what goes into each cavity, how its contacts are crimped,
// and the face of the insert with the number of each wire in its cavity. A connector with many cavities
// has a block of its own; small ones share one table. The lists of pins and of crimps, as files, are made
// of the same rows.
//
// A small letter that names a cavity is underlined wherever it stands.
package connector
