package stamped

import (
	"slices"
	"strings"

	"contralay/model/wirelist/penned"
	"contralay/model/wirelist/table"
)

// Behind is what a line says behind its day, its hour and the name before a message; ok is false where it begins with neither.
//
//	04 Mar  Ran engine.        Ran engine.
//	2026-03-04 08:15 - wired   wired
//	[18:03] Teo: yes           yes
func Behind(text string) (says string, ok bool) {
	if says, ok = penned.Message(text); ok {
		return says, true
	}
	const most = 5 // words of a stamp (no source)
	rest := strings.TrimSpace(text)
	number, month := false, false
	for range most {
		word, behind, _ := strings.Cut(rest, " ")
		bare := strings.Trim(word, "[]().,;:-–|")
		switch {
		case isDate(bare) || isHour(bare) || isDay(bare):
			ok = true
		case isMonth(bare):
			month = true
		case isDayOfMonth(bare):
			number = true
		case strings.Trim(word, "-–|") == "" && (ok || number && month):
		default:
			return rest, (ok || number && month) && rest != ""
		}
		rest = strings.TrimSpace(behind)
	}
	return rest, (ok || number && month) && rest != ""
}

// isDate reports whether a word is a day in numbers alone: two signs part three numbers, "4.3.26", "2026-03-04".
func isDate(w string) bool {
	parts := strings.FieldsFunc(w, func(r rune) bool { return r == '.' || r == '/' || r == '-' })
	return len(parts) == 3 && len(w) > 5 && !slices.ContainsFunc(parts, func(p string) bool { return !isNumber(p) || len(p) > 4 })
}

// isHour reports whether a word is a time of day, "8:15", "18:03:20".
func isHour(w string) bool {
	parts := strings.Split(w, ":")
	return (len(parts) == 2 || len(parts) == 3) &&
		!slices.ContainsFunc(parts[1:], func(p string) bool { return len(p) != 2 || !isNumber(p) }) &&
		isNumber(parts[0]) && len(parts[0]) < 3
}

// isDayOfMonth reports whether a word is the number of a day, or a year: "4", "3rd", "2026".
func isDayOfMonth(w string) bool {
	for _, of := range []string{"st", "nd", "rd", "th"} {
		w = strings.TrimSuffix(w, of)
	}
	return isNumber(w) && (len(w) < 3 || len(w) == 4)
}

func isNumber(w string) bool { return w != "" && strings.Trim(w, "0123456789") == "" }

// months and days are words for them in some languages, whole and short, folded. From memory, no source.
var (
	months = strings.Fields(`jan january januar janvier janv enero ene gennaio gen januari feb february februar
		fevrier fev fevr febrero febbraio februari mar march marz mrz mars marzo maart apr april avril avr abril abr aprile may mai mayo mag
		maggio mei maj jun june juni juin junio giugno giu jul july juli juillet juil julio luglio lug aug august aout agosto ago augustus
		augusti sep sept september septembre septiembre settembre set oct october okt oktober octobre octubre ottobre ott nov november
		novembre noviembre dec december dez dezember decembre dic diciembre dicembre des`)
	days = strings.Fields(`mon monday tue tues tuesday wed wednesday thu thur thurs thursday fri friday sat
		saturday sun sunday montag dienstag mittwoch donnerstag freitag samstag sonntag lundi mardi mercredi jeudi vendredi samedi dimanche
		lunes martes miercoles jueves viernes sabado domingo lunedi martedi mercoledi giovedi venerdi sabato domenica maandag dinsdag
		woensdag donderdag vrijdag zaterdag zondag mandag tirsdag onsdag torsdag fredag lordag sondag mandag tisdag`)
)

// isMonth reports whether a word is a month or begins as one, "Mar", "March", "März", "févr".
func isMonth(w string) bool {
	f := table.Fold(w)
	return len(f) > 2 && slices.Contains(months, f)
}

// isDay reports whether a word is a day of the week, "Mon", "Monday", "Montag".
func isDay(w string) bool {
	f := table.Fold(w)
	return len(f) > 2 && slices.Contains(days, f)
}
