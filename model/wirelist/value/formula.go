package value

import (
	"slices"
)

// IsErrorValue: what a spreadsheet shows where a formula fails.
func IsErrorValue(c string) bool {
	return slices.Contains([]string{"#REF!", "#N/A", "#VALUE!", "#NAME?", "#DIV/0!", "#NULL!", "#NUM!", "#NV", "#BEZUG!", "#WERT!"}, c)
}
