#include "app/wording/document_words.h"

#include "app/wording/formats.h"
#include "core/plain_text.h"

namespace rig {

namespace {

constexpr std::size_t kMostKeyShown = 60;

QString keyShown(const std::string& text)
{
    return QString::fromStdString(elided(withPlaceholders(text), kMostKeyShown));
}

// In the document: the line; of a fact that was read so far also what it is.
QString whereIn(const DocumentFault& fault)
{
    const QString line = Formats{}.count(static_cast<int>(fault.line));
    if (fault.kind.empty())
        return fault.line > 0 ? DocumentWords::tr("line %1").arg(line) : QString{};
    if (fault.line == 0 && fault.id.empty())
        return keyShown(fault.kind);
    if (fault.line == 0)
        return DocumentWords::tr("%1 %2", "the kind of a fact, and its id")
            .arg(keyShown(fault.kind), keyShown(fault.id));
    if (fault.id.empty())
        return DocumentWords::tr("line %1, %2", "a line, and the kind of fact in it")
            .arg(line, keyShown(fault.kind));
    return DocumentWords::tr("line %1, %2 %3", "a line, the kind of the fact in it, and its id")
        .arg(line, keyShown(fault.kind), keyShown(fault.id));
}

// Of what stands at one place in the document.
QString whatIsWrong(const DocumentFault& fault)
{
    switch (fault.problem) {
    case DocumentProblem::MissingKey:
        return DocumentWords::tr("“%1” is missing").arg(keyShown(fault.key));
    case DocumentProblem::UnknownKey:
        return DocumentWords::tr("“%1” is nothing that stands there").arg(keyShown(fault.key));
    case DocumentProblem::UnknownKind:
        return DocumentWords::tr("“%1” is no kind of fact that this Rigband knows").arg(keyShown(fault.key));
    case DocumentProblem::LaterLayout:
        return DocumentWords::tr("“%1” came with a later layout than the %2 that stands at “layout”")
            .arg(keyShown(fault.key), keyShown(fault.named));
    case DocumentProblem::KeyTwice:
        return DocumentWords::tr("“%1” stands there twice").arg(keyShown(fault.key));
    case DocumentProblem::WrongType:
        return DocumentWords::tr("what stands at “%1” is not of the kind that belongs there")
            .arg(keyShown(fault.key));
    case DocumentProblem::OutOfRange:
        return DocumentWords::tr("what stands at “%1” is smaller or larger than it may be")
            .arg(keyShown(fault.key));
    case DocumentProblem::UnknownWord:
        return DocumentWords::tr("the word at “%1” is none that this Rigband knows").arg(keyShown(fault.key));
    case DocumentProblem::NotADay:
        return DocumentWords::tr("what stands at “%1” is no day").arg(keyShown(fault.key));
    case DocumentProblem::IdTwice:
        return DocumentWords::tr("another fact with this id stands in the document already");
    case DocumentProblem::OtherSubject:
        return DocumentWords::tr("“%1” makes it a version of something else, while other facts still name it")
            .arg(keyShown(fault.key));
    case DocumentProblem::LostReference:
        return DocumentWords::tr("“%1” names something of the kind “%2” that is nowhere in the document")
            .arg(keyShown(fault.key), keyShown(fault.named));
    default:
        return fault.key.empty() ? DocumentWords::tr("its parts contradict one another")
                                 : DocumentWords::tr("its parts contradict one another, first of all “%1”")
                                       .arg(keyShown(fault.key));
    }
}

} // namespace

QString DocumentWords::written(const QString& document, const QString& file, std::int64_t facts)
{
    if (facts == 0)
        return tr("%1 holds everything that is in %2, in which no fact has been saved yet.")
            .arg(document, file);
    return tr("%1 holds everything that is in %2, %Ln fact(s) with photos and the chain. It tells names and "
              "notes as they were typed.",
              nullptr, static_cast<int>(facts))
        .arg(document, file);
}

QString DocumentWords::made(const QString& file, std::int64_t facts)
{
    if (facts == 0)
        return tr("Made: %1, in which nothing stands: the document holds no fact.").arg(file);
    return tr("Made: %1, with %Ln fact(s) of the document under the same ids, and its chain.", nullptr,
              static_cast<int>(facts))
        .arg(file);
}

QString DocumentWords::tooLarge(const QString& document)
{
    return tr("%1 is larger than 4 GB, so it was not read. Look whether it is the one "
              "that “rigband-file export --json” wrote.")
        .arg(document);
}

QString DocumentWords::sentence(const QString& document, const DocumentFault& fault)
{
    switch (fault.problem) {
    case DocumentProblem::CannotRead:
        return tr("%1 could not be read to its end. Look whether it is a file that you may read, then try "
                  "again.")
            .arg(document);
    case DocumentProblem::EndsEarly:
        return tr("%1 ends too early, in %2: a part of it is missing. Copy or write it once more.")
            .arg(document, whereIn(fault));
    case DocumentProblem::NotJson:
        return tr("%1 is no JSON in %2. Look at it there, or write it once more.")
            .arg(document, whereIn(fault));
    case DocumentProblem::TooLong:
        return tr("%1 holds a text or a figure in %2 that is longer than anything of a Rigband file. Look at "
                  "it "
                  "there.")
            .arg(document, whereIn(fault));
    case DocumentProblem::NotOurs:
        return tr("%1 is no document of a Rigband file: such a one begins with “format”, “version” and "
                  "“layout”. Choose the one that “rigband-file export --json” wrote.")
            .arg(document);
    case DocumentProblem::Newer:
        return tr("%1 was written by a newer Rigband than this one. Install the newer program to read it.")
            .arg(document);
    default:
        return whereIn(fault).isEmpty()
                   ? tr("%1 cannot be taken: %2.").arg(document, whatIsWrong(fault))
                   : tr("%1 cannot be taken. In %2: %3.").arg(document, whereIn(fault), whatIsWrong(fault));
    }
}

QString DocumentWords::asFoundInstead()
{
    return tr("Look at these facts, and ask who changed them. To go on with everything as it was found, add "
              "--as-found.");
}

QString DocumentWords::nothingMade() { return tr("Nothing was made."); }

} // namespace rig
