#include "app/pages/setup/airframe_panel.h"

#include "app/pages/setup/panel_parts.h"
#include "app/wording/day_words.h"
#include "app/wording/plan_field_words.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

namespace rig {

namespace {

AirframeEntry noAirframe()
{
    AirframeEntry entry;
    entry.riggingsBefore = QStringLiteral("0");
    return entry;
}

} // namespace

AirframePanel::AirframePanel(SetUpPresenter& presenter)
    : SetUpPanel{presenter, {SetUpWords::airframePart(), SetUpWords::whyAirframe()}}
{
    makeForm();
    m_further = panelButton("furtherAirframe", SetUpWords::furtherAirframe());
    m_back = panelButton("backToAirframe", {});
    m_form->addButton(m_further);
    m_form->addButton(m_back);
    m_chosen = noAirframe();
    m_form->open({}, m_chosen);
    body()->addWidget(m_form);
    body()->addStretch(1);
    connect(m_form, &Form::saveAsked, this, &AirframePanel::save);
    connect(m_further, &QPushButton::clicked, this, [this] { enterFurther(true); });
    connect(m_back, &QPushButton::clicked, this, [this] { enterFurther(false); });
}

void AirframePanel::makeForm()
{
    using Words = SetUpWords;
    using Entry = AirframeEntry;
    m_form = new EntryForm<AirframeEntry>{Words::saveWithKey(), false};
    m_form->line({"registrationField", Words::registration(), Words::needed(), Field::Registration},
                 &Entry::registration);
    m_form->line({"type", Words::type(), {}, {}}, &Entry::type);
    m_form->line({"serial", Words::serial(), {}, {}}, &Entry::serial);
    m_form->line(
        {"riggingsBefore", Words::riggingsBefore(), Words::riggingsBeforeHint(), Field::RiggingsBefore},
        &Entry::riggingsBefore);
    m_form->line({"callName", Words::callName(), Words::callNameHint(), {}}, &Entry::callName);
    m_form->line({"callPhone", Words::callPhone(), {}, {}}, &Entry::callPhone);
    m_form->day({"annualDue", Words::annualDue(), DayWords::hintOrEmpty(), Field::AnnualDue},
                &Entry::annualDue);
    m_form->line({"jurisdiction", Words::jurisdiction(), Words::jurisdictionHint(), {}},
                 &Entry::jurisdiction);
    m_form->line({"span", PlanFieldWords::span(), PlanFieldWords::spanHint(), Field::Span}, &Entry::span);
    m_form->choice({"tailForm", PlanFieldWords::tail(), {}, {}}, &Entry::tail, TailForm::V,
                   PlanFieldWords::tailName);
    m_form->line(
        {"wingPanels", PlanFieldWords::wingPanels(), PlanFieldWords::wingPanelsHint(), Field::WingPanels},
        &Entry::wingPanels);
    m_form->text({"manualReferences", Words::manualReferences(), Words::manualReferencesHint(), {}},
                 &Entry::manualReferences);
}

void AirframePanel::display(const SetUpView& view)
{
    const std::optional<AirframeId> now = view.airframe ? std::optional{view.airframe->id} : std::nullopt;
    const bool same = now == m_airframe;
    m_chosen = view.airframe ? entryOf(*view.airframe) : noAirframe();
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
        m_form->putAside(shownAirframe());
}

void AirframePanel::showEntry()
{
    const std::optional<IdBytes> of =
        m_isFurther || !m_airframe ? std::nullopt : std::optional{m_airframe->bytes};
    m_further->setVisible(m_airframe && !m_isFurther);
    m_back->setVisible(m_isFurther);
    m_back->setText(SetUpWords::backToAirframe(m_chosen.registration));
    if (m_form->takeUp(shownAirframe()))
        return;
    m_form->setTitle(m_isFurther ? SetUpWords::furtherAirframeTitle() : QString{});
    m_form->open(of, m_isFurther ? noAirframe() : m_chosen);
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
    const auto of = m_form->of<AirframeId>();
    const auto result = presenter().airframe.save(m_form->entry(), of);
    if (result)
        m_form->showProblems(result.value().problems);
    const bool isSaved = result && result.value().isSaved();
    if (isSaved)
        m_form->takeAsSaved();
    if (isSaved && !of) {
        m_isFurther = false;
        emit airframeAdded(AirframeId{result.value().id});
    } else {
        report(result);
    }
    if (isSaved)
        m_form->showStatus(savedNow());
}

void AirframePanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_isFurther)
        return enterFurther(false);
    SetUpPanel::keyPressEvent(event);
}

} // namespace rig
