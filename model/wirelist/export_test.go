package wirelist_test

import (
	"maps"
	"slices"

	"contralay/model/wirelist/name"
)

// Headings is every heading that is known, folded.
func Headings() []string { return slices.Sorted(maps.Keys(name.Vocabulary())) }
