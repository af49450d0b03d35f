#include "tests/house/wording.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QWidget>

namespace rig::test {

namespace {

// Walks through C++ source, one piece at a time.
class Source
{
public:
    explicit Source(const QString& text) : m_text{text} {}

    QStringList literals()
    {
        while (m_at < m_text.size())
            step();
        return m_literals;
    }

private:
    bool sees(const char* what) const
    {
        return QStringView{m_text}.sliced(m_at).startsWith(QLatin1String(what));
    }
    void skipTo(const QString& end)
    {
        const qsizetype found = m_text.indexOf(end, m_at);
        m_at = found < 0 ? m_text.size() : found + end.size();
    }

    void step()
    {
        if (sees("//") || sees("#include"))
            skipTo(QStringLiteral("\n"));
        else if (sees("/*"))
            skipTo(QStringLiteral("*/"));
        else if (sees("R\"("))
            raw();
        else if (sees("'") && !isDigitSeparator())
            character();
        else if (sees("\""))
            add(quoted());
        else
            other();
    }

    bool isDigitSeparator() const { return m_at > 0 && m_text[m_at - 1].isLetterOrNumber(); }

    void raw()
    {
        const qsizetype from = m_at + 3;
        skipTo(QStringLiteral(")\""));
        add(m_text.sliced(from, std::max<qsizetype>(0, m_at - 2 - from)));
    }

    void character()
    {
        m_at += m_text.mid(m_at + 1, 1) == QLatin1String("\\") ? 2 : 1;
        skipTo(QStringLiteral("'"));
        m_follows = false;
    }

    QString quoted()
    {
        QString literal;
        for (++m_at; m_at < m_text.size() && m_text[m_at] != QLatin1Char('"'); ++m_at) {
            if (m_text[m_at] == QLatin1Char('\\') && ++m_at < m_text.size())
                literal += m_text[m_at] == QLatin1Char('n') ? QLatin1Char('\n') : m_text[m_at];
            else
                literal += m_text[m_at];
        }
        ++m_at;
        return literal;
    }

    void add(const QString& literal)
    {
        if (m_follows)
            m_literals.last() += literal;
        else
            m_literals << literal;
        m_follows = true;
    }

    void other()
    {
        m_follows = m_follows && m_text[m_at].isSpace();
        ++m_at;
    }

    const QString& m_text;
    qsizetype m_at = 0;
    bool m_follows = false; // nothing but blanks since the last literal
    QStringList m_literals;
};

void addRows(const QAbstractItemModel& model, const QModelIndex& under, QStringList& words)
{
    for (int column = 0; !under.isValid() && column < model.columnCount(); ++column)
        words << model.headerData(column, Qt::Horizontal).toString();
    for (int row = 0; row < model.rowCount(under); ++row)
        for (int column = 0; column < model.columnCount(under); ++column) {
            const QModelIndex index = model.index(row, column, under);
            for (const int role :
                 {Qt::DisplayRole, Qt::ToolTipRole, Qt::AccessibleTextRole, Qt::AccessibleDescriptionRole})
                words << index.data(role).toString();
        }
}

void addOf(const QWidget& widget, QStringList& words)
{
    words << widget.windowTitle() << widget.toolTip() << widget.accessibleName()
          << widget.accessibleDescription();
    for (const QAction* action : widget.actions())
        words << action->text() << action->toolTip();
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        words << label->text();
    else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        words << button->text();
    else if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
        words << line->text() << line->placeholderText();
    else if (const auto* text = qobject_cast<const QPlainTextEdit*>(&widget))
        words << text->toPlainText() << text->placeholderText();
    else if (const auto* choice = qobject_cast<const QComboBox*>(&widget))
        for (int i = 0; i < choice->count(); ++i)
            words << choice->itemText(i);
    else if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget); view && view->model())
        addRows(*view->model(), {}, words);
}

} // namespace

QStringList literalsIn(const QString& source)
{
    return Source{source}.literals();
}

QStringList wordsOn(const QWidget& widget)
{
    QStringList words;
    addOf(widget, words);
    for (const QWidget* inside : widget.findChildren<QWidget*>())
        addOf(*inside, words);
    words.removeAll(QString{});
    return words;
}

} // namespace rig::test
