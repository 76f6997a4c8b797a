package ends

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// FillCavities counts what stands in each termination and tests barrel and seal.
// Every unwired cavity of a sealed connector is closed by a contact and a seal
// plug, reserved ones too.
func FillCavities(s *sheet.Sheet) {
	if s.Reuse.All {
		s.Terms, s.SaidTerm = s.Reuse.Prior.Terms, s.Reuse.Prior.SaidTerm
		s.Kept(s.SaidTerm)
		return
	}
	mark := len(s.Snags)
	defer func() { s.SaidTerm = s.Since(mark) }()
	s.Terms = make([]sheet.Term, len(s.H.Terminations))
	for i := range s.H.Terminations {
		openTerm(s, i)
	}
	for i := range s.H.Wires {
		w := &s.H.Wires[i]
		for _, text := range []string{w.From.V, w.To.V} {
			if t, name, ok := cavity(s, text, w.ID); ok {
				c := t.State[name]
				c.Wires = append(c.Wires, w.ID)
				t.State[name] = c
			}
		}
	}
	placeDrains(s)
	for i := range s.Terms {
		countTerm(s, i)
		notJudged(s, i)
	}
}

// placeDrains takes the cavities that a shield's drain ends in; a drain to a
// splice, to the shell, or cut takes none.
func placeDrains(s *sheet.Sheet) {
	for i := range s.H.Units {
		u := &s.H.Units[i]
		for _, text := range []string{u.DrainFrom.V, u.DrainTo.V} {
			t, name, ok := cavity(s, text, u.ID)
			if !ok {
				continue
			}
			c := t.State[name]
			if t.Sealed && (len(c.Wires) > 0 || c.Drain != "") {
				s.Say(sheet.Stop, "cavity.twice", text,
					fmt.Sprintf("It holds the drain of %s beside another wire; a sealed cavity takes one wire",
						u.ID))
			}
			c.Drain = u.ID
			t.State[name] = c
		}
	}
}

// cavity finds the cavity that an end of something stands in. A termination whose
// cavities are not known has whichever are used; one whose cavities are known and
// lacks this one is a stop. ok is false where there is no cavity to stand in.
func cavity(s *sheet.Sheet, text, who string) (t *sheet.Term, name string, ok bool) {
	e, ok := s.Index.End(text)
	k, known := s.Index.Termination[e.Termination]
	if !ok || e.Splice != "" || !known {
		return nil, "", false
	}
	t = &s.Terms[k]
	if _, there := t.State[e.Cavity]; there {
		return t, e.Cavity, true
	}
	if hasCavities(s, k) {
		s.SayLike(sheet.Stop, "cavity.none", who, e.Termination,
			fmt.Sprintf("%s has no cavity %q. %s", e.Termination, e.Cavity, whichItHas(s, k)))
		return nil, "", false
	}
	t.Cavities = append(t.Cavities, e.Cavity)
	return t, e.Cavity, true
}

// hasCavities reports whether the cavities of a termination are known before its
// wires are: its own list, or an insert that the catalogue has.
func hasCavities(s *sheet.Sheet, t int) bool {
	_, known := s.Cat.Insert(s.H.Terminations[t].Insert.V)
	return known || len(s.H.Terminations[t].Cavities) > 0
}

func openTerm(s *sheet.Sheet, i int) {
	t, out := &s.H.Terminations[i], &s.Terms[i]
	out.State = map[string]sheet.Cavity{}
	size := map[string]string{}
	for _, sz := range slices.Sorted(maps.Keys(t.Contacts)) {
		for _, c := range t.Contacts[sz] {
			size[t.CavityOf(c)] = sz
		}
	}
	out.HasContacts = len(t.Contacts) > 0
	out.Sealed = len(t.SealMM) == 2
	out.Cavities = slices.Clone(t.Cavities)
	if t.Insert.V != "" {
		ins, ok := s.Cat.Insert(t.Insert.V)
		if !ok {
			s.Say(sheet.Warn, "insert.part", t.ID, fmt.Sprintf("Insert %q is in no catalogue: its cavities are taken as they are wired",
				t.Insert.V))
		} else {
			out.Sealed, out.HasContacts = true, true
			if len(out.Cavities) == 0 {
				out.Cavities = slices.Clone(ins.Cavities)
			}
			for _, c := range out.Cavities {
				if size[c] == "" {
					size[c] = ins.ContactSize(c)
				}
			}
		}
	}
	for _, c := range out.Cavities {
		out.State[c] = sheet.Cavity{Size: size[c]}
	}
	tight(s, i)
	aliases(s, i)
	namesCavities(s, i)
}

// tight stops where a wall that must be tight is passed by anything but a sealed connector
// that is fixed in it; that it is rated for what is behind, its maker says. Common practice,
// no source.
func tight(s *sheet.Sheet, i int) {
	t := &s.H.Terminations[i]
	switch fixed := t.Mount.V == model.MountFlange || t.Mount.V == model.MountJamNut; {
	case !t.Tight.V:
	case !s.Terms[i].Sealed || !fixed:
		s.Say(sheet.Stop, "wall.tight", t.ID,
			"It is in a wall that must be tight: only a rated sealed pass-through may go through it, that is a sealed insert on a flange "+
				"or with a jam nut")
	default:
		s.Say(sheet.Note, "wall.rated", t.ID,
			"It is in a wall that must be tight: check in its maker's sheet that it is rated for what is behind the wall")
	}
}

// aliases tells which other names of cavities cannot be told apart.
func aliases(s *sheet.Sheet, i int) {
	t, out := &s.H.Terminations[i], &s.Terms[i]
	ownerOf := map[string]string{}
	for _, c := range slices.Sorted(maps.Keys(t.Aliases)) {
		if _, there := out.State[c]; !there && hasCavities(s, i) {
			s.Say(sheet.Stop, "cavity.alias", t.ID,
				fmt.Sprintf("It gives another name to cavity %q, which it does not have. %s", c, whichItHas(s, i)))
		}
		for _, a := range t.Aliases[c] {
			if _, isCavity := out.State[a]; isCavity && a != c {
				s.Say(sheet.Stop, "cavity.alias", t.ID, fmt.Sprintf("It also calls cavity %s %q, but has another cavity %q", c, a, a))
			}
			if o := ownerOf[a]; o != "" && o != c {
				s.Say(sheet.Stop, "cavity.alias", t.ID, fmt.Sprintf("It calls two cavities %q: %s and %s", a, o, c))
			}
			ownerOf[a] = c
		}
	}
}

func countTerm(s *sheet.Sheet, i int) {
	t, out := &s.H.Terminations[i], &s.Terms[i]
	for _, name := range out.Cavities {
		c := out.State[name]
		reserved := t.Reserves(name)
		switch {
		case c.Drain != "":
			out.Used++
		case len(c.Wires) == 0 && reserved:
			out.Reserved++
		case len(c.Wires) == 0:
			out.Blank++
			out.Free = append(out.Free, name)
		case allSpare(s, c.Wires):
			out.Spare++
		default:
			out.Used++
		}
		if c.Drain != "" && len(c.Wires) == 0 {
			out.Contacts++
		}
		if len(c.Wires) > 0 {
			out.Contacts++
			if reserved {
				s.Say(sheet.Warn, "cavity.reserved", t.ID,
					fmt.Sprintf("Cavity %s is reserved but holds wire %s", name, strings.Join(c.Wires, ", ")))
			}
			testBarrel(s, t, out, name, c)
		}
	}
	if out.Sealed {
		out.SealPlugs = out.Reserved + out.Blank
		out.Contacts += out.SealPlugs
		if t.Firewall.V { // AC 43.13-1B ¶ 11-262
			out.Stubs = out.SealPlugs
		}
	}
	contactsKnown(s, i)
}

func allSpare(s *sheet.Sheet, ids []string) bool {
	for _, id := range ids {
		if k, ok := s.Index.Wire[id]; ok && s.H.Wires[k].Role.V != model.RoleSpare {
			return false
		}
	}
	return true
}

// testBarrel tests conductor and seal of one cavity. Two wires under one seal are
// refused; in an unsealed barrel their circular mils add up (NASA-STD-8739.4
// § 19.11). A range that is only from memory gives no more than a warning.
func testBarrel(s *sheet.Sheet, t *model.Termination, out *sheet.Term, name string, c sheet.Cavity) {
	where := t.ID + ":" + name
	if len(c.Wires) > 1 && out.Sealed {
		s.Say(sheet.Stop, "cavity.twice", where,
			fmt.Sprintf("It holds wires %s; a sealed cavity takes one wire", strings.Join(c.Wires, " and ")))
		return
	}
	entry, known := s.Cat.Contact(c.Size)
	area, mm := 0.0, sheet.Dia{}
	for _, id := range c.Wires {
		k := s.Index.Wire[id]
		area += float64(s.Wires[k].Entry.AreaMM2)
		mm = s.Wires[k].Dia
	}
	if known && area > 0 {
		thick, thin := InBarrel(s.Cat, entry, unit.SquareMM(area))
		if thick {
			s.SayLike(sheet.AtMost(entry.AWGStanding, sheet.Stop), "cavity.barrel", where, "thick "+c.Size,
				fmt.Sprintf("%s for a size %s contact: %s AWG at most", too("thick", s, c.Wires), c.Size, entry.LargestAWG))
		}
		if thin {
			s.SayLike(sheet.AtMost(weaker(entry.SmallestStanding), sheet.Stop), "cavity.barrel", where, "thin "+c.Size,
				fmt.Sprintf("%s for a size %s contact: %s AWG at least. Check the part's sheet", too("thin", s, c.Wires), c.Size,
					entry.SmallestAWG))
		}
	}
	if len(c.Wires) != 1 || !mm.Known() {
		return
	}
	switch {
	case len(t.SealMM) == 2:
		if mm.Nominal < t.SealMM[0] || mm.Nominal > t.SealMM[1] {
			s.SayLike(sheet.Stop, "cavity.seal", where, fmt.Sprint("seal ", t.SealMM, mm.Nominal),
				fmt.Sprintf("Wire %s of %s mm does not seal: the seal takes %s to %s mm", c.Wires[0], unit.Fixed(mm.Nominal, 2),
					unit.Fixed(t.SealMM[0], 2), unit.Fixed(t.SealMM[1], 2)))
		}
	case known && t.Insert.V != "" && entry.SealMaxMM > 0:
		if mm.Nominal < entry.SealMinMM || mm.Nominal > entry.SealMaxMM {
			st := catalogue.Weakest(weaker(entry.SealStanding), weaker(mm.Standing)) // of both that are compared
			s.SayLike(sheet.AtMost(st, sheet.Stop), "cavity.seal", where, fmt.Sprint("seal ", c.Size, mm.Nominal),
				fmt.Sprintf("Wire %s of %s mm is outside the seal of a size %s cavity, %s to %s mm. Check the part's sheet", c.Wires[0],
					unit.Fixed(mm.Nominal, 2), c.Size, unit.Fixed(entry.SealMinMM, 2),
					unit.Fixed(entry.SealMaxMM, 2)))
		}
	}
}

// too says that one wire is too thick or too thin, or several together.
func too(what string, s *sheet.Sheet, ids []string) string {
	if len(ids) > 1 {
		return whichWires(s, ids) + " are together too " + what
	}
	return whichWires(s, ids) + " is too " + what
}

// areaSlack lets a conductor through that differs from the nominal area of its
// gauge only by its stranding.
const areaSlack = 1.05

// InBarrel reports whether a conductor is too thick or too thin for the barrel of a contact,
// as far as the catalogue knows; what it does not know is neither.
func InBarrel(cat *catalogue.Catalogue, k catalogue.Contact, area unit.SquareMM) (thick, thin bool) {
	most, ok1 := StrandedArea(cat, k.LargestAWG)
	least, ok2 := StrandedArea(cat, k.SmallestAWG)
	return ok1 && float64(area) > float64(most)*areaSlack, ok2 && float64(area)*areaSlack < float64(least)
}

// StrandedArea is the copper of an aerospace conductor of that gauge.
func StrandedArea(cat *catalogue.Catalogue, awg string) (unit.SquareMM, bool) {
	for _, spec := range []string{"AS22759/41", "AS22759/44"} {
		if e, ok := cat.Wire(spec, awg); ok && e.AreaMM2 > 0 {
			return e.AreaMM2, true
		}
	}
	return 0, false
}

func whichWires(s *sheet.Sheet, ids []string) string {
	if len(ids) == 1 {
		if k, ok := s.Index.Wire[ids[0]]; ok {
			return fmt.Sprintf("wire %s (%s)", ids[0], s.H.Wires[k].Size)
		}
	}
	return "wires " + strings.Join(ids, " and ")
}

func weaker(st catalogue.Standing) catalogue.Standing {
	if st == "" {
		return catalogue.Memory
	}
	return st
}

// Takes reports whether a cavity's contact and seal take a wire size, as far as
// the catalogue knows; what it does not know is no reason to refuse.
func Takes(s *sheet.Sheet, term int, cavity, spec, size string) bool {
	t := &s.H.Terminations[term]
	c := s.Terms[term].State[cavity]
	e, known := s.Cat.Wire(spec, size)
	if !known {
		return true
	}
	if len(t.SealMM) == 2 && (e.OverMM < t.SealMM[0] || e.OverMM > t.SealMM[1]) {
		return false
	}
	k, known := s.Cat.Contact(c.Size)
	if !known {
		return true
	}
	if thick, thin := InBarrel(s.Cat, k, e.AreaMM2); thick || thin {
		return false
	}
	sealed := t.Insert.V != "" && len(t.SealMM) != 2 && k.SealMaxMM > 0
	return !sealed || (e.OverMM >= k.SealMinMM && e.OverMM <= k.SealMaxMM)
}
