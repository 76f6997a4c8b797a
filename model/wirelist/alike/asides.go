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
				if number := ampsOf(p.text); number != "" {
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

// currentsAside takes the currents that stand last behind the values of wires for remarks, as those in brackets are: "15A" is no cavity of
// the far end before the values. One at least is larger than a cavity of that letter is likely to be.
//
//  2. Panel F1 -> Fridge, 6 mm2 red, 15A
//  3. Panel F2 -> Chart lamp, 1 mm2 white, 5A
func currentsAside(side [][]piece) {
	var at []*piece
	large := false
	for _, all := range side {
		n := len(all)
		if n < 3 || !all[n-2].isValue() || all[n-1].isValue() || !saysPin(all[n-1].text) {
			continue
		}
		number := ampsOf(all[n-1].text)
		if number == "" {
			return // other lines have a cavity there
		}
		at = append(at, &all[n-1])
		large = large || len(number) > 1
	}
	for _, p := range at {
		p.aside = large
	}
}

// ampsOf is the number before an "A", "15" of "15A"; "" where the text is no such.
func ampsOf(text string) string {
	if number, ok := strings.CutSuffix(text, "A"); ok && strings.Trim(number, "0123456789.,") == "" {
		return number
	}
	return ""
}
