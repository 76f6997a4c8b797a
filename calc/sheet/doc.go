// Package sheet is what a sheet is: its wires, branches, layers, covers, feeds, splices
// and open points, as the phases of calc fill them in and as everybody else reads them.
package sheet
