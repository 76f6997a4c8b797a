// Package name reads the names in a cell: connectors, cavities, splices, states, titles.
package name
