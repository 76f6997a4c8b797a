package doingword

// IsChange reports whether a folded text is the order of a list of changes and nothing more: what is done with the wire of its row, which
// is no name of it.
func IsChange(f string) bool {
	switch f {
	case "add", "added", "change", "changed", "modify", "modified", "mod", "move", "moved", "keep", "kept", "same", "unchanged", "replace",
		"replaced", "remove", "removed", "delete", "deleted", "neu", "hinzu", "hinzufugen", "geandert", "andern", "bleibt", "entfernen",
		"loschen", "ajouter", "ajoute", "modifier", "modifie", "supprimer", "garder", "anadir", "cambiar", "quitar", "mantener",
		"aggiungere", "modificare", "togliere", "toevoegen", "wijzigen", "verwijderen":
		return true
	}
	return false
}
