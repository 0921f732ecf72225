//! The texts that findings point into.

/// One of the user's files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct FileId(usize);

impl FileId {
    /// Its number in the order of loading.
    #[must_use]
    pub fn number(self) -> usize {
        self.0
    }
}

/// The user's files as they were read.
#[derive(Debug, Default)]
pub struct Sources {
    files: Vec<(String, String)>,
    unreadable: Vec<FileId>,
}

impl Sources {
    /// Takes in a file.
    pub fn add(&mut self, path: String, text: String) -> FileId {
        self.files.push((path, text));
        FileId(self.files.len() - 1)
    }

    /// Takes in a file that can be shown but not read, such as one that is not UTF-8.
    pub fn add_unreadable(&mut self, path: String, text: String) -> FileId {
        let file = self.add(path, text);
        self.unreadable.push(file);
        file
    }

    /// The file's path as the user would write it.
    #[must_use]
    pub fn path(&self, file: FileId) -> &str {
        self.files.get(file.0).map_or("", |(path, _)| path)
    }

    /// The file's text.
    #[must_use]
    pub fn text(&self, file: FileId) -> &str {
        self.files.get(file.0).map_or("", |(_, text)| text)
    }

    /// Every readable file's text, in the order of loading.
    pub fn texts(&self) -> impl Iterator<Item = (FileId, &str)> {
        (self.files.iter().enumerate())
            .map(|(index, (_, text))| (FileId(index), text.as_str()))
            .filter(|(file, _)| !self.unreadable.contains(file))
    }
}
