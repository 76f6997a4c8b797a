package alike

// Runs parts lines that tell both ends of a wire each, with an arrow or one and the same word between them. ok is false where most of
// them do not.
//
//	J1 pin A -> Crank sensor pin 1 | 1.0mm², brown        * ECU 4 to Radio 2: CAN H, red
func Runs(texts []string) (lines []Line, ok bool) {
	ids, bare := withoutIDs(texts)
	near, far, arrow, ok := halves(bare)
	if !ok || !arrow {
		if n, f, dash := dashed(bare); dash {
			near, far, arrow, ok = n, f, true, true
		}
	}
	if !ok {
		return nil, false
	}
	lines = make([]Line, len(texts))
	l := newLot(near, far)
	l.ends = true
	l.fill(lines)
	partNames(lines)
	pinned := 0
	for i := range lines {
		line := &lines[i]
		if ids != nil {
			line.ID = ids[i]
		}
		if line.From == "" || line.To == "" || !isShort(line.From) || !isShort(line.To) {
			return nil, false
		}
		if saysEnd(line.From) || saysEnd(line.To) {
			pinned++
		}
	}
	if !arrow && 5*pinned < 4*len(lines) { // "give the spare key to Anna"
		return nil, false
	}
	var nears, fars []*string
	for i := range lines {
		nears, fars = append(nears, &lines[i].From), append(fars, &lines[i].To)
	}
	sameEnds(nears)
	sameEnds(fars)
	return lines, true
}
