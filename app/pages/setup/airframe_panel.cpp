#include "app/pages/setup/airframe_panel.h"

#include "app/pages/setup/airframe_form.h"
#include "app/wording/setup_words.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

namespace rig {

namespace {

AirframeEntry emptyEntry()
{
    AirframeEntry entry;
    entry.riggingsBefore = QStringLiteral("0");
    return entry;
}

} // namespace

AirframePanel::AirframePanel(SetUpPresenter& presenter, QWidget* parent)
    : SetUpPanel{presenter, SetUpWords::airframePart(), SetUpWords::whyAirframe(), parent}
{
    m_form = new AirframeForm;
    m_chosen = m_saved = emptyEntry();
    m_form->setEntry(m_saved);
    m_further = new QPushButton{SetUpWords::furtherAirframe()};
    m_further->setObjectName("furtherAirframe");
    m_back = new QPushButton;
    m_back->setObjectName("backToAirframe");
    m_form->addButton(m_further);
    m_form->addButton(m_back);
    body()->addWidget(m_form);
    body()->addStretch(1);
    connect(m_form, &Form::saveAsked, this, &AirframePanel::save);
    connect(m_form, &Form::edited, this,
            [this] { m_form->showStatus(hasUnsaved() ? SetUpWords::notSavedYet() : QString{}); });
    connect(m_further, &QPushButton::clicked, this, [this] { enterFurther(true); });
    connect(m_back, &QPushButton::clicked, this, [this] { enterFurther(false); });
}

AirframeId AirframePanel::shown() const
{
    return m_isFurther ? AirframeId{} : m_airframe.value_or(AirframeId{});
}

void AirframePanel::display(const SetUpView& view)
{
    const std::optional<AirframeId> now = view.airframe ? std::optional{view.airframe->id} : std::nullopt;
    const bool same = now == m_airframe;
    m_chosen = view.airframe ? entryOf(*view.airframe) : emptyEntry();
    if (same && (m_isFurther || hasUnsaved()))
        return;
    stash();
    m_isFurther = false;
    m_airframe = now;
    showEntry();
}

void AirframePanel::stash()
{
    if (hasUnsaved())
        m_typed[shown()] = m_form->entry();
}

void AirframePanel::showEntry()
{
    const auto typed = m_typed.extract(shown());
    m_saved = m_isFurther ? emptyEntry() : m_chosen;
    m_form->setEntry(typed ? typed.mapped() : m_saved);
    m_form->setTitle(m_isFurther ? SetUpWords::furtherAirframeTitle() : QString{});
    m_further->setVisible(m_airframe && !m_isFurther);
    m_back->setVisible(m_isFurther);
    m_back->setText(SetUpWords::backToAirframe(m_chosen.registration));
    m_form->showProblems({});
    m_form->showStatus(typed ? SetUpWords::notSavedYet() : QString{});
}

bool AirframePanel::hasUnsaved() const
{
    return m_form->entry() != m_saved;
}

void AirframePanel::focusFirst()
{
    m_form->focusFirst();
}

void AirframePanel::enterFurther(bool further)
{
    stash();
    m_isFurther = further;
    showEntry();
    m_form->focusFirst();
}

void AirframePanel::save()
{
    const std::optional<AirframeId> of = m_isFurther ? std::nullopt : m_airframe;
    const auto result = presenter().save(m_form->entry(), of);
    if (result)
        m_form->showProblems(result.value().problems);
    if (result && result.value().isSaved())
        m_saved = m_form->entry();
    if (!result || !result.value().isSaved() || of) {
        if (report(result))
            m_form->showStatus(savedNow());
        return;
    }
    m_isFurther = false;
    emit airframeAdded(AirframeId{result.value().id});
    m_form->showStatus(savedNow());
}

void AirframePanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_isFurther)
        return enterFurther(false);
    SetUpPanel::keyPressEvent(event);
}

} // namespace rig
