package value

import (
	"contralay/model/wirelist/table"
)

// What lists are read into, and the places in them: see package table.
type (
	Table  = table.Table
	Row    = table.Row
	Place  = table.Place
	Error  = table.Error
	Limits = table.Limits
)

// DefaultLimits are those of package table.
func DefaultLimits() Limits { return table.DefaultLimits() }

// Read makes tables of one file: table.Read.
func Read(name string, data []byte, limits Limits) ([]Table, error) {
	return table.Read(name, data, limits)
}

func Fold(s string) string { return table.Fold(s) }

func Tidy(s string) string { return table.Tidy(s) }

func Short(s string) string { return table.Short(s) }

func ColumnLetter(n int) string { return table.ColumnLetter(n) }
