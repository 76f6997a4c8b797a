package alike

import (
	"slices"
	"strings"
)

// What stands in brackets behind a value is the name of the wire where most lines have it, "(main feed)"; where a few have, it is a remark
// on theirs: "2.5 mm2 red (still to buy!)".

// withAside parts brackets out of a piece that is a value without them, "red (new)" and "0.75 mm2 (thin) yellow".
func withAside(p piece) []piece {
	front, rest, ok := strings.Cut(p.text, " (")
	in, behind, closed := strings.Cut(rest, ")")
	if p.isValue() || !ok || !closed || strings.ContainsAny(in, "(") || strings.ContainsAny(behind, "()") {
		return []piece{p}
	}
	if v := asPiece(front + behind); v.isValue() {
		return []piece{v, {text: in, aside: true}}
	}
	return []piece{p}
}

// remarksAside takes what stands in brackets behind values out of the pieces of each line, where a few lines have such; nil where they
// are the names of the wires.
func (l *lot) remarksAside() [][]string {
	aside := func(p piece) bool { return p.aside }
	used, has := 0, 0
	for i := range l.near {
		if len(l.near[i])+len(l.far[i]) > 0 {
			used++
		}
		if slices.ContainsFunc(l.near[i], aside) || slices.ContainsFunc(l.far[i], aside) {
			has++
		}
	}
	if has == 0 || 2*has > used && !l.asidesDiffer() {
		return nil
	}
	texts := make([][]string, len(l.near))
	for i := range l.near {
		for _, all := range []*[]piece{&l.near[i], &l.far[i]} {
			for _, p := range *all {
				if p.aside {
					texts[i] = append(texts[i], p.text)
				}
			}
			*all = slices.DeleteFunc(slices.Clone(*all), aside)
		}
	}
	return texts
}

// asidesDiffer reports whether some of what stands in brackets behind values could be a cavity and is none: "15A" where the others could
// be no cavities, or are currents as it is. Lines that say such things behind their values say remarks and no names.
//
//  7. Fuse box F1 -> Fridge (6 mm2, red) 15A
//  9. Fuse box F4 -> Galley lamp (1.5 mm2, white) with a switch on the locker
func (l *lot) asidesDiffer() bool {
	cavities, texts, amps, large := 0, 0, 0, false
	for i := range l.near {
		for _, p := range slices.Concat(l.near[i], l.far[i]) {
			switch {
			case !p.aside:
			case saysPin(p.text):
				cavities++
				if number, ok := strings.CutSuffix(p.text, "A"); ok && strings.Trim(number, "0123456789.,") == "" {
					amps++
					large = large || len(number) > 1
				}
			case strings.Contains(p.text, " "):
				texts++
			}
		}
	}
	return cavities > 0 && (texts >= cavities || large && amps == cavities)
}
