#pragma once

#include "app/pages/setup/entry_form.h"
#include "app/pages/setup/setup_panel.h"

class QPushButton;

namespace rig {

// The chosen airframe, or a further one.
class AirframePanel : public SetUpPanel
{
    Q_OBJECT

public:
    explicit AirframePanel(SetUpPresenter& presenter);

    void display(const SetUpView& view) override;
    bool hasUnsaved() const override { return m_form->hasUnsaved(); }
    bool hasTyped() const override { return hasUnsaved() || m_form->hasAside(); }
    void focusFirst() override { m_form->focusFirst(); }

signals:
    void airframeAdded(rig::AirframeId airframe);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void makeForm();
    void save();
    void enterFurther(bool further);
    void stash();
    void showEntry();
    // The key of what stands in the form; null for an airframe that is not saved yet.
    AirframeId shownAirframe() const
    {
        return m_isFurther ? AirframeId{} : m_airframe.value_or(AirframeId{});
    }

    EntryForm<AirframeEntry>* m_form = nullptr;
    QPushButton* m_further = nullptr;
    QPushButton* m_back = nullptr;
    std::optional<AirframeId> m_airframe;
    AirframeEntry m_chosen; // of m_airframe, as it is in the file
    bool m_isFurther = false;
};

} // namespace rig
