package words

// ToWords are the words that stand in a line between what a wire is and where it goes, in small letters, the longer ones first. Common
// words of each language, from memory, no source.
func ToWords() []string {
	return []string{
		"goes to", "runs to", "connects to", "leads to", "to",
		"geht an", "geht nach", "geht zu", "nach", "zum", "zur", "zu", "an",
		"va vers", "va a", "vers", "au", "à",
		"va hacia", "hacia", "hasta", "para", "verso", "fino a",
		"gaat naar", "naar", "går till", "till", "går til", "til", "do", "ke",
	}
}
