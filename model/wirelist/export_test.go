package wirelist

import (
	"maps"
	"slices"
)

// Headings is every heading that is known, folded.
func Headings() []string { return slices.Sorted(maps.Keys(vocabulary())) }
