// Package keep is where the work of a bench goes that is not saved: the journal in the user's folder, the run
// log beside the file, and what an earlier bench left behind.
package keep
