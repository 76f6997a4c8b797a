// Package board is the screens of the step Build: what stops, the print, what was measured; the bench run is in runs.
package board
