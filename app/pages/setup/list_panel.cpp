#include "app/pages/setup/list_panel.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/panel_parts.h"
#include "app/wording/coupling_words.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

ListPanel::ListPanel(SetUpPresenter& presenter, const PartText& part, const ListText& list)
    : SetUpPanel{presenter, part}
{
    m_list = new QWidget;
    auto* layout = new QVBoxLayout{m_list};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_none = softLabel(list.none);
    m_rows = new RowList{list.rowName, list.title};
    layout->addWidget(m_none);
    layout->addWidget(m_rows);
    body()->addWidget(m_list);
    body()->addStretch(1);
    connect(m_rows, &RowList::rowChosen, this, [this] { rowChosen(); });
    connect(m_rows, &RowList::rowOpened, this, [this] {
        if (const Row* row = m_opened ? chosen() : nullptr)
            m_opened(Row{*row});
    });
}

QPushButton* ListPanel::button(const char* name, const QString& text, Pressed pressed)
{
    QPushButton* button = panelButton(name, text);
    connect(button, &QPushButton::clicked, this, std::move(pressed));
    return button;
}

QPushButton* ListPanel::buttonFor(const char* name, const QString& text,
                                  std::function<void(const Row&)> pressed)
{
    // A copy: the rows may be others by the time a question is answered.
    QPushButton* made = button(name, text, [this, pressed = std::move(pressed)] {
        if (const Row* row = chosen())
            pressed(Row{*row});
    });
    m_forChosen.push_back(made);
    return made;
}

void ListPanel::addButtons(const std::vector<QPushButton*>& buttons, bool above)
{
    auto* layout = static_cast<QVBoxLayout*>(m_list->layout());
    layout->insertWidget(above ? 0 : layout->count(), new ButtonFlow{buttons});
}

void ListPanel::addBelow(QWidget* widget)
{
    m_list->layout()->addWidget(widget);
}

void ListPanel::beginAt(QPushButton* button, bool always)
{
    m_first = button;
    m_alwaysFirst = always;
}

void ListPanel::setUseButton(QPushButton* button, const QString& takeOut, const QString& putBack)
{
    m_use = button;
    m_takeOut = takeOut;
    m_putBack = putBack;
}

void ListPanel::addForm(Form* form, Pressed save)
{
    m_forms.push_back(form);
    form->hide();
    body()->insertWidget(body()->count() - 1, form);
    connect(form, &Form::saveAsked, this, std::move(save));
    connect(form, &Form::closeAsked, this, [this] { show(nullptr); });
}

bool ListPanel::hasTyped() const
{
    return hasUnsaved() || std::ranges::any_of(m_forms, &Form::hasAside);
}

void ListPanel::setLook(const Look& look)
{
    SetUpPanel::setLook(look);
    m_rows->setLook(look);
}

void ListPanel::focusFirst()
{
    if (m_form)
        m_form->focusFirst();
    else if (m_first && (m_alwaysFirst || m_shown.empty()))
        m_first->setFocus();
    else
        m_rows->focusChosen();
}

void ListPanel::show(Form* form)
{
    m_form = form;
    m_list->setVisible(!form);
    for (Form* one : m_forms)
        one->setVisible(one == form);
    if (isVisible())
        focusFirst();
}

void ListPanel::showRows(std::vector<Row> rows)
{
    m_shown = std::move(rows);
    std::vector<RowText> texts;
    for (const Row& row : m_shown)
        texts.push_back(row.text);
    m_rows->display(texts);
    m_none->setVisible(m_shown.empty());
    for (QPushButton* button : m_forChosen)
        button->setVisible(!m_shown.empty());
    if (m_first && !m_alwaysFirst)
        setPrimary(m_first, m_shown.empty());
    rowChosen();
}

void ListPanel::rowChosen()
{
    if (const Row* row = m_use ? chosen() : nullptr)
        m_use->setText(row->inUse ? m_takeOut : m_putBack);
}

const ListPanel::Row* ListPanel::chosen() const
{
    const int at = m_rows->chosen();
    return at < 0 ? nullptr : &m_shown[static_cast<std::size_t>(at)];
}

void ListPanel::choose(const IdBytes& id)
{
    const auto found = std::ranges::find(m_shown, id, &Row::id);
    if (found == m_shown.end())
        return;
    m_rows->choose(static_cast<int>(found - m_shown.begin()));
    rowChosen();
}

void ListPanel::finish(Form* form, const Result<Saved>& result)
{
    if (result)
        form->showProblems(result.value().problems);
    const bool isSaved = result && result.value().isSaved();
    if (isSaved)
        show(nullptr);
    report(result);
    if (isSaved)
        choose(result.value().id);
}

bool ListPanel::leaveFor(const std::optional<Airframe>& airframe)
{
    const auto now = airframe ? std::optional{airframe->id} : std::nullopt;
    if (now == m_airframe)
        return false;
    if (m_airframe && hasUnsaved())
        m_form->putAside(*m_airframe);
    m_airframe = now;
    show(nullptr);
    return true;
}

void ListPanel::arrive()
{
    m_rows->choose(0);
    for (Form* form : m_forms)
        if (form->takeUp(airframe()))
            show(form);
    rowChosen();
}

OrderPanel::OrderPanel(SetUpPresenter& presenter, Prompts& prompts, const PartText& part,
                       const ListText& list, const QString& takeOutQuestion)
    : ListPanel{presenter, part, list}, m_prompts{prompts}, m_takeOutQuestion{takeOutQuestion}
{
}

OrderPanel::Buttons OrderPanel::makeOrderButtons(const char* up, const char* down, const char* use)
{
    const Buttons made{buttonFor(up, CouplingWords::moveUp(), [this](const Row& row) { move(row, -1); }),
                       buttonFor(down, CouplingWords::moveDown(), [this](const Row& row) { move(row, 1); }),
                       buttonFor(use, CouplingWords::takeOut(), [this](const Row& row) { changeUse(row); })};
    setUseButton(made.use, CouplingWords::takeOut(), CouplingWords::putBack());
    return made;
}

RowText OrderPanel::orderedText(const QString& name, int number, bool inUse, bool isDone)
{
    RowText text;
    text.title = inUse ? CouplingWords::line(number, name) : CouplingWords::lineOutOfUse(name);
    if (inUse) {
        text.shape = isDone ? MarkShape::DiscTick : MarkShape::DashedRing;
        text.role = isDone ? Role::Accent : Role::Unknown;
    }
    return text;
}

void OrderPanel::move(const Row& row, int by)
{
    if (!row.inUse || !report(moveThing(row.id, by)))
        return;
    choose(row.id);
    rows()->focusChosen();
}

void OrderPanel::changeUse(const Row& row)
{
    if (row.inUse && !m_prompts.confirm(this, CouplingWords::takeOutTitle(row.name), m_takeOutQuestion,
                                        CouplingWords::takeOutYes()))
        return;
    report(setThingInUse(row.id, !row.inUse));
}

void OrderPanel::keyPressEvent(QKeyEvent* event)
{
    const bool arrow = event->key() == Qt::Key_Up || event->key() == Qt::Key_Down;
    if (const Row* row = chosen();
        row && isListShown() && arrow && event->modifiers().testFlag(Qt::AltModifier))
        return move(Row{*row}, event->key() == Qt::Key_Up ? -1 : 1);
    ListPanel::keyPressEvent(event);
}

} // namespace rig
