#include "app/pages/setup/form.h"

#include "app/pages/day_edit.h"
#include "app/pages/setup/panel_parts.h"
#include "app/widgets/announcer.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/still_box.h"
#include "app/wording/setup_words.h"
#include "core/plain_text.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

Form::Form(const QString& saveText, bool canBeClosed, QWidget* parent)
    : QWidget{parent}, m_canBeClosed{canBeClosed}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_title = labelOf({}, "section");
    m_explanation = labelOf({}, "soft");
    layout->addWidget(m_title);
    layout->addWidget(m_explanation);
    m_title->hide();
    m_explanation->hide();
    connect(this, &Form::edited, this,
            [this] { sayIn(m_status, hasUnsaved() ? SetUpWords::notSavedYet() : QString{}); });
    m_grid = new QGridLayout;
    m_grid->setHorizontalSpacing(24);
    m_grid->setVerticalSpacing(12);
    m_grid->setColumnStretch(0, 1);
    m_grid->setColumnStretch(1, 1);
    layout->addLayout(m_grid);
    m_buttons = new ButtonFlow{{}};
    m_save = panelButton("save", saveText);
    m_save->setProperty("kind", "primary");
    m_buttons->add(m_save);
    m_status = labelOf({}, "soft", "formStatus");
    connect(m_save, &QPushButton::clicked, this, &Form::askToSave);
    if (canBeClosed) {
        auto* close = panelButton("closeForm", SetUpWords::closeForm());
        connect(close, &QPushButton::clicked, this, &Form::closeAsked);
        m_buttons->add(close);
    }
    layout->addWidget(m_buttons);
    layout->addWidget(m_status);
}

void Form::setTitle(const QString& title)
{
    sayIn(m_title, title);
}

QString Form::title() const
{
    return m_title->text();
}

void Form::setExplanation(const QString& sentence, const char* kind)
{
    m_explanation->setProperty("kind", kind);
    sayIn(m_explanation, sentence);
}

void Form::place(QWidget* widget, Width width)
{
    if (width == Width::Whole) {
        if (m_column == 1)
            ++m_row;
        m_grid->addWidget(widget, m_row++, 0, 1, 2);
        m_column = 0;
        return;
    }
    m_grid->addWidget(widget, m_row, m_column, Qt::AlignTop);
    m_row += m_column;
    m_column = 1 - m_column;
}

void Form::add(const FieldText& text, QWidget* editor, QWidget* named, Width width)
{
    Place one;
    one.around = new QWidget;
    one.editor = editor;
    one.named = named;
    one.field = text.field;
    auto* layout = new QVBoxLayout{one.around};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(3);
    QLabel* label = labelOf(text.label, "label");
    label->setBuddy(named);
    one.hint = labelOf({}, "soft");
    one.problem = labelOf({}, "problem");
    one.problem->setObjectName(QLatin1String(text.name) + QLatin1String("Problem"));
    one.problem->hide();
    named->setObjectName(QLatin1String(text.name));
    named->setAccessibleName(withoutMnemonic(text.label));
    named->setAccessibleDescription(text.hint);
    layout->addWidget(label);
    layout->addWidget(editor);
    layout->addWidget(one.hint);
    layout->addWidget(one.problem);
    sayIn(one.hint, text.hint);
    place(one.around, width);
    m_places.push_back(one);
}

QLineEdit* Form::addLine(const FieldText& text, Width width)
{
    auto* line = new QLineEdit;
    connect(line, &QLineEdit::textEdited, this, &Form::edited);
    add(text, line, line, width);
    return line;
}

QPlainTextEdit* Form::addText(const FieldText& text)
{
    constexpr int kLines = 3;
    auto* edit = new QPlainTextEdit;
    edit->setTabChangesFocus(true);
    edit->setFixedHeight(kLines * edit->fontMetrics().lineSpacing() + 24);
    connect(edit, &QPlainTextEdit::textChanged, this, &Form::edited);
    add(text, edit, edit, Width::Whole);
    return edit;
}

QComboBox* Form::addChoice(const FieldText& text, Width width)
{
    auto* box = new StillBox;
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(12);
    connect(box, &QComboBox::activated, this, &Form::edited);
    add(text, box, box, width);
    return box;
}

DayEdit* Form::addDay(const FieldText& text, Width width)
{
    auto* day = new DayEdit;
    day->setCalendarName(withoutMnemonic(text.label));
    connect(day, &DayEdit::edited, this, &Form::edited);
    add(text, day, day->line(), width);
    return day;
}

void Form::addWidget(QWidget* widget)
{
    place(widget, Width::Whole);
}

void Form::addButton(QPushButton* button)
{
    button->setAutoDefault(true);
    m_buttons->add(button);
}

void Form::setFieldVisible(QWidget* editor, bool visible)
{
    for (const Place& one : m_places)
        if (one.editor == editor)
            one.around->setVisible(visible);
}

void Form::setHint(QWidget* editor, const QString& hint)
{
    for (const Place& one : m_places)
        if (one.editor == editor)
            sayIn(one.hint, hint);
}

void Form::showProblems(const std::vector<FieldProblem>& problems)
{
    const Place* first = nullptr;
    for (const Place& one : m_places) {
        const auto problem = std::ranges::find_if(
            problems, [&one](const FieldProblem& each) { return one.field == each.field; });
        const bool refused = problem != problems.end();
        sayIn(one.problem, refused ? problem->sentence : QString{});
        one.named->setAccessibleDescription(refused ? problem->sentence : one.hint->text());
        if (refused && !first)
            first = &one;
    }
    if (first)
        goTo(*first);
}

void Form::goTo(const Place& refused)
{
    showStatus(SetUpWords::notSaved());
    refused.named->setFocus();
    for (QWidget* around = parentWidget(); around; around = around->parentWidget())
        if (auto* scroll = qobject_cast<FlowScroll*>(around))
            return scroll->bringIntoView(refused.problem);
}

namespace {

QString typedIn(const QWidget* editor, int& most)
{
    most = kLongestLine;
    if (const auto* line = qobject_cast<const QLineEdit*>(editor))
        return line->text();
    most = kLongestNote;
    const auto* edit = qobject_cast<const QPlainTextEdit*>(editor);
    return edit ? edit->toPlainText() : QString{};
}

} // namespace

// What no field takes, whatever it stands for.
bool Form::isRefused()
{
    const Place* first = nullptr;
    for (const Place& one : m_places) {
        int most = 0;
        const QString typed = typedIn(one.named, most);
        QString problem;
        if (typed.size() > most)
            problem = SetUpWords::tooLong(most);
        else if (hasInvisible(typed.toStdString()))
            problem = SetUpWords::invisible();
        sayIn(one.problem, problem);
        first = first || problem.isEmpty() ? first : &one;
    }
    if (!first)
        return false;
    first->named->setAccessibleDescription(first->problem->text());
    goTo(*first);
    return true;
}

void Form::askToSave()
{
    if (!isRefused())
        emit saveAsked();
}

void Form::showStatus(const QString& sentence)
{
    sayAloud(m_status, sentence);
}

void Form::focusFirst()
{
    for (const Place& one : m_places)
        if (one.around->isVisibleTo(this)) {
            one.editor->setFocus();
            return;
        }
    m_save->setFocus();
}

void Form::keyPressEvent(QKeyEvent* event)
{
    if (isEnter(*event) && event->modifiers() != Qt::ShiftModifier) {
        askToSave();
        return;
    }
    if (event->key() == Qt::Key_Escape && m_canBeClosed) {
        emit closeAsked();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace rig
