package desk

import (
	"contralay/model"
)

// SheathOf is the sheath of a branch, made where it has none.
func SheathOf(b *model.Branch) *model.Cover {
	for i := range b.Covers {
		if b.Covers[i].What == model.CoverSheath {
			return &b.Covers[i]
		}
	}
	b.Covers = append(b.Covers, model.Cover{What: model.CoverSheath})
	return &b.Covers[len(b.Covers)-1]
}
