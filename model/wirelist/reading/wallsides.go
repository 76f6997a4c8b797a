package reading

import (
	"slices"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// wallSides reads the cavities of a bulkhead whose column names it, beside two columns headed by the two sides of the wall.
//
//	Bulkhead | Inside | Outside | Signal
//	1        | ECU A1 | Pump 1  | Fuel pump
func wallSides(l *look) []shape.Column {
	via := slices.IndexFunc(l.Cols, func(c shape.Column) bool { return !c.Given && saysPassage(c.Head) })
	if via < 0 || !l.holdsCavities(via) || l.Prof[via].Filled < 2 {
		return nil
	}
	from, to := l.sidesOfWall(via)
	if from < 0 {
		return nil
	}
	cols := slices.Clone(l.Cols)
	for _, i := range []int{from, via, to} {
		cols[i].Field = name.FieldKeep
	}
	if l.Has(cols, name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldVia) {
		return nil
	}
	cols[from].Field, cols[via].Field, cols[to].Field = name.FieldFrom, name.FieldVia, name.FieldTo
	cols[via].Of = passageOf(l.Cols[via].Head)
	return cols
}

// sidesOfWall finds two columns that are headed by the two sides of a wall; −1 where there are none.
func (l *look) sidesOfWall(via int) (from, to int) {
	free := func(i int) bool { return i != via && !l.Cols[i].Given && l.Prof[i].Filled > 0 }
	for i := range l.Cols {
		for k := i + 1; k < len(l.Cols); k++ {
			swapped, ok := words.AreSides(table.Fold(l.Cols[i].Head), table.Fold(l.Cols[k].Head))
			switch {
			case !ok || !free(i) || !free(k):
			case swapped:
				return k, i
			default:
				return i, k
			}
		}
	}
	return -1, -1
}
