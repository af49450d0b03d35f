#include "app/window/drafts.h"

#include "app/pages/page.h"
#include "app/window/remembered.h"
#include "app/wording/draft_words.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSettings>

namespace rig {

namespace {

QString keyOf(const QString& path)
{
    return settingOf(QStringLiteral("drafts"), path);
}

// A line of a box belongs to the box, whose value stands in a list.
bool isOfABox(const QWidget& line)
{
    const QWidget* holder = line.parentWidget();
    return qobject_cast<const QComboBox*>(holder) || qobject_cast<const QAbstractSpinBox*>(holder);
}

// Where the field is, and what the words in it are about.
QString placeOf(const QWidget& field, const QWidget& around, const QString& where)
{
    if (&field == &around)
        return where;
    const QString outside = field.parentWidget() ? placeOf(*field.parentWidget(), around, where) : where;
    const QString about = field.property(kIsAbout).toString();
    return about.isEmpty() ? outside : DraftWords::of(outside, about);
}

} // namespace

QStringList typedInto(const QWidget& around, const QString& where)
{
    QStringList lines;
    const auto add = [&](const QWidget& field, const QString& text) {
        if (!text.trimmed().isEmpty())
            lines << DraftWords::line(placeOf(field, around, where), field.accessibleName(), text.trimmed());
    };
    for (const auto* line : around.findChildren<QLineEdit*>())
        if (line->isModified() && !isOfABox(*line))
            add(*line, line->text());
    for (const auto* text : around.findChildren<QPlainTextEdit*>())
        if (text->document()->isModified())
            add(*text, text->toPlainText());
    if (const auto* page = qobject_cast<const Page*>(&around))
        for (const TypedAside& one : page->typedAside())
            if (!one.text.trimmed().isEmpty())
                lines << DraftWords::line(DraftWords::of(where, one.about), one.field, one.text.trimmed());
    return lines;
}

void keepDrafts(const QString& path, const Drafts& drafts)
{
    QSettings{}.setValue(keyOf(path), QStringList{drafts.when} + drafts.lines);
}

std::optional<Drafts> keptDrafts(const QString& path)
{
    const QStringList kept = QSettings{}.value(keyOf(path)).toStringList();
    if (kept.size() < 2)
        return std::nullopt;
    return Drafts{kept.front(), kept.mid(1)};
}

void forgetDrafts(const QString& path)
{
    QSettings{}.remove(keyOf(path));
}

} // namespace rig
