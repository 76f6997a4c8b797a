// Package run answers which steps build a finished sheet, and what a reading from the board says.
package run
