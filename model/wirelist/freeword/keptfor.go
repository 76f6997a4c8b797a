package freeword

import "strings"

// keptFor are the words of a cavity that is kept for something; what for stands behind them.
var keptFor = [...]string{
	"reserved for ", "reserve for ", "reserved - ", "reserved: ", "held for ", "future ", "free for ", "for later",
	"reserviert fur ", "reserviert fuer ", "vorgehalten fur ", "frei fur ", "frei fuer ",
	"reserve pour ", "reserve au ", "libre pour ",
	"libre para ", "reservado para ", "reservada para ",
	"riservato a ", "riservata a ", "riservato per ", "riservata per ", "libero per ",
	"gereserveerd voor ", "vrij voor ", "reserverad for ", "reserverat for ", "reserveret til ", "reservert for ", "reservert til ",
	"zarezerwowane dla ", "zarezerwowane na ", "zarezerwowany dla ",
}

// spareFor are the words for a spare with what it is for behind them: a cavity that is kept, or a wire that is laid in for later.
var spareFor = [...]string{
	"spare for ", "reserve fur ", "reserve fuer ", "reserve f. ", "reserva para ", "riserva per ", "scorta per ",
	"reserve voor ", "reserv for ", "reserve til ", "rezerwa dla ", "rezerwa na ", "rezerva pro ", "rezerva na ",
}

// IsKeptFor reports whether a folded text says that a cavity is kept, and for what.
func IsKeptFor(folded string) bool { return begins(folded, keptFor[:]) }

// IsSpareFor reports whether a folded text says that something is a spare, and for what.
func IsSpareFor(folded string) bool { return begins(folded, spareFor[:]) }

func begins(folded string, leads []string) bool {
	for _, lead := range leads {
		if len(folded) > 0 && folded[0] == lead[0] && strings.HasPrefix(folded, lead) {
			return true
		}
	}
	return false
}
