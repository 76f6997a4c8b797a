// Package board is the screens of the step Build: what stops, the bench run, what was measured.
package board
