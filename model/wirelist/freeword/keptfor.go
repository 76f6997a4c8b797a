package freeword

import (
	"slices"
	"strings"
)

// keptFor are the words of a cavity that is kept for something; what for stands behind them.
var keptFor = [...]string{
	"reserved for ", "reserve for ", "reserved - ", "reserved: ", "held for ", "future ", "free for ", "for later",
	"reserviert fur ", "reserviert fuer ", "vorgehalten fur ", "frei fur ", "frei fuer ",
	"reserve pour ", "reserve au ", "libre pour ",
	"libre para ", "reservado para ", "reservada para ",
	"riservato a ", "riservata a ", "riservato per ", "riservata per ", "libero per ",
	"gereserveerd voor ", "vrij voor ", "reserverad for ", "reserverat for ", "reserveret til ", "reservert for ", "reservert til ",
	"zarezerwowane dla ", "zarezerwowane na ", "zarezerwowane pod ", "zarezerwowany dla ", "zarezerwowany na ", "zarezerwowany pod ",
	"zarezerwowana dla ", "zarezerwowana na ", "zarezerwowana pod ", "przeznaczone dla ", "przeznaczony dla ",
	"nothing yet, kept for ", "empty, kept for ", "free, kept for ", "unused, kept for ", "not used, kept for ", "nothing, kept for ",
	"kept for ", "keep for ", "kept free for ", "keep free for ", "for future ", "set aside for ", "earmarked for ",
	"vorgesehen fur ", "vorgesehen fuer ", "freigehalten fur ", "freigehalten fuer ",
	"prevu pour ", "prevue pour ", "previsto para ", "prevista para ", "previsto per ", "prevista per ",
	"voorbehouden voor ", "voorzien voor ", "avsedd for ", "avsatt for ", "avsatt til ", "avsatt till ", "satt av til ", "afsat til ",
	"rezervovano pro ", "rezervovany pro ", "rezervovane pro ", "rezervovane pre ", "vyhrazeno pro ", "varattu: ",
	"fenntartva ", "rezervat pentru ", "rezervirano za ", "зарезервировано для ", "зарезервирован для ", "зарезервировано под ",
	"зарезервовано для ", "κρατημενο για ", "κρατημένο για ",
}

// keptBehind are such words that stand behind what the cavity is kept for.
var keptBehind = [...]string{
	" reserviert", " vorgesehen", " freigehalten", " gereserveerd", " fenntartva", " icin ayrilmis", " icin rezerve", " icin ayrildi",
	"lle varattu", "lle varaus", " varten varattu",
}

// spareFor are the words for a spare with what it is for behind them: a cavity that is kept, or a wire that is laid in for later.
var spareFor = [...]string{
	"spare for ", "reserve fur ", "reserve fuer ", "reserve f. ", "reserva para ", "riserva per ", "scorta per ",
	"reserve voor ", "reserv for ", "reserve til ", "rezerwacja dla ", "rezerwacja na ", "rezerwa pod ",
	"rezerwa dla ", "rezerwa na ", "rezerva pro ", "rezerva na ",
}

// IsKeptFor reports whether a folded text says that a cavity is kept, and for what.
func IsKeptFor(folded string) bool {
	if strings.IndexByte(folded, ' ') < 0 {
		return false
	}
	return begins(folded, &leadsOfKept) || isFinnishFor(folded) ||
		slices.ContainsFunc(keptBehind[:], func(w string) bool { return len(folded) > len(w)+1 && strings.HasSuffix(folded, w) })
}

// isFinnishFor reports whether a text is the Finnish word for reserved before what for, whose case says so: "varattu pumpulle", "varattu
// pumppua varten". "Varattu akku" is a charged battery.
func isFinnishFor(folded string) bool {
	of, is := strings.CutPrefix(folded, "varattu ")
	if !is {
		of, is = strings.CutPrefix(folded, "varaus ")
	}
	return is && len(of) > len("lle") && (strings.HasSuffix(of, "lle") || strings.HasSuffix(of, " varten"))
}

// IsSpareFor reports whether a folded text says that something is a spare, and for what.
func IsSpareFor(folded string) bool { return begins(folded, &leadsOfSpare) }

// byFirst holds words by the first byte of each, so that a text is compared with few of them.
type byFirst [256][]string

var leadsOfKept, leadsOfSpare = sorted(keptFor[:]), sorted(spareFor[:])

func sorted(words []string) (all byFirst) {
	for _, w := range words {
		all[w[0]] = append(all[w[0]], w)
	}
	return all
}

func begins(folded string, leads *byFirst) bool {
	return folded != "" && slices.ContainsFunc(leads[folded[0]], func(lead string) bool { return strings.HasPrefix(folded, lead) })
}
