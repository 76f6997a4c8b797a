// Package shape explains the figures of form: layers, bundles, covers, rooms, lengths and
// masses.
package shape
